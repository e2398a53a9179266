package afterlength.workshop.paper;

import java.util.List;

/**
 * What stands at the head and the foot of every 1 : 1 sheet, so that a sheet found in a drawer still says what it is.
 *
 * @param title what is drawn
 * @param instrument which instrument it is for
 * @param date when it was drawn, in words
 * @param inputs the measures it was drawn from
 * @param drawnBy the program and its version
 * @param language of all these words, such as {@code en}
 */
public record SheetHead(
        String title, String instrument, String date, List<Entry> inputs, String drawnBy, String language) {
    public SheetHead {
        inputs = List.copyOf(inputs);
    }
}

package afterlength.workshop.examination;

import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A picture with its marks, and the tools to set new ones.
 *
 * @param card what is said of the card in the picture; null for a drawing
 * @param justWithdrawn what can be brought back with one touch, or null
 * @param reading what is said of the points in the form
 * @param prints the numbered sheets whose check lines were measured
 * @param cardNumber of the sheet in this picture, or null when it was not told
 */
record MarkingPage(
        Frame frame,
        MarkGround ground,
        List<MarkEntry> marks,
        @Nullable CardLine card,
        @Nullable DrawnMark justWithdrawn,
        ReadingPart reading,
        List<Choice> findings,
        Typed typed,
        Typed cardTyped,
        List<CardPrint> prints,
        @Nullable Integer cardNumber,
        List<String> hands) {

    boolean correcting() {
        return !typed.raw("replaces").isEmpty();
    }

    /** "pocket card 2: 99.2 and 100.4 mm". */
    static String words(CardPrint print) {
        return print.card().word() + " card " + print.number() + ": " + Figures.plain(print.levelMm()) + " and "
                + Figures.plain(print.uprightMm()) + " mm";
    }

    /** "0 0 4032 3024". */
    String viewBox() {
        return numbers(ground.left(), ground.top(), ground.width(), ground.height());
    }

    private static String numbers(double... values) {
        StringBuilder text = new StringBuilder();
        for (double value : values) {
            text.append(text.isEmpty() ? "" : " ").append(Math.round(value));
        }
        return text.toString();
    }

    /** A small circle where the mark begins carries its number; its size goes by the picture. */
    String radius() {
        return Long.toString(Math.max(1, Math.round(Math.max(ground.width(), ground.height()) / 120)));
    }

    String letters() {
        return Long.toString(Math.max(2, Math.round(Math.max(ground.width(), ground.height()) / 45)));
    }
}

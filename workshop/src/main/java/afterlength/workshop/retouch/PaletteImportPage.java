package afterlength.workshop.retouch;

import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * An instrument's file being read.
 *
 * @param file what was understood; null before a file was given
 */
record PaletteImportPage(Frame frame, Typed typed, @Nullable InstrumentFile file) {
    int[] rows() {
        return IntStream.range(0, PaletteForm.FILMS).toArray();
    }

    /** The samples by their place in the file, and none. */
    List<Choice> samples() {
        List<Choice> all = new ArrayList<>(List.of(new Choice("", "none")));
        if (file != null) {
            for (int n = 0; n < file.readings().size(); n++) {
                all.add(new Choice(Integer.toString(n), file.readings().get(n).name()));
            }
        }
        return all;
    }
}

package afterlength.workshop.retouch;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.stream.IntStream;

/** A colour whose drawdowns are typed as L*a*b*. */
record PaletteTypedPage(Frame frame, Typed typed) {
    int[] rows() {
        return IntStream.range(0, PaletteForm.FILMS).toArray();
    }
}

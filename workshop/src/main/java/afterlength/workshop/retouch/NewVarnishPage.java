package afterlength.workshop.retouch;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.stream.IntStream;

/** A batch being written down. */
record NewVarnishPage(Frame frame, Typed typed) {
    int[] rows() {
        return IntStream.range(0, VarnishForm.ROWS).toArray();
    }
}

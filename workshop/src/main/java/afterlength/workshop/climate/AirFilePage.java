package afterlength.workshop.climate;

import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Frame;

/** One logger file: what was read of it, and every row that was not. */
record AirFilePage(Frame frame, AirFile file) {
    String answer() {
        int lost = file.rowCount() - file.readings();
        return file.readings() + " readings from " + Days.words(file.from()) + " to " + Days.words(file.to())
                + (lost == 0
                        ? "; every row is counted."
                        : "; " + lost + (lost == 1 ? " row is" : " rows are") + " not counted.");
    }
}

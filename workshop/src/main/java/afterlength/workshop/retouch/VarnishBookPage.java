package afterlength.workshop.retouch;

import afterlength.workshop.desk.Cautions;
import afterlength.workshop.desk.Frame;
import java.util.List;

/** The varnish book on the shelf. */
record VarnishBookPage(Frame frame, List<VarnishEntry> entries) {
    List<Cautions> cautions() {
        return VarnishWords.cautions(true);
    }
}

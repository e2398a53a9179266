package afterlength.workshop.retouch;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;

/** One batch: what it comes to, its coats, and a coat being written down. */
record VarnishPage(Frame frame, VarnishEntry entry, Typed typed) {
    /** Whether any coat bears a remark. */
    boolean remarked() {
        return entry.coats().stream().anyMatch(coat -> !coat.remark().isEmpty());
    }

    String address() {
        return "/shelf/varnish/" + entry.varnish().id();
    }
}

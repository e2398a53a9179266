package afterlength.workshop.tablet;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.List;

/**
 * Tablets on the shelf.
 *
 * @param address where a tablet pairs; empty while the door is shut or no code is good
 * @param square the same as a square to be photographed, as SVG
 * @param code the code as it is typed, in two groups
 */
record TabletPage(
        Frame frame,
        boolean open,
        String address,
        String square,
        String code,
        String fingerprint,
        List<Tablet> tablets,
        Typed typed) {}

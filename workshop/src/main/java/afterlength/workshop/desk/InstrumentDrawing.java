package afterlength.workshop.desk;

import afterlength.craft.geometry.InstrumentShape;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A line drawing of an instrument as an SVG element, in the manner of a pen on notebook paper. One unit of its view box is one
 * millimetre. The ink is the colour of the text around it; size comes from the page. Drawn from common measures: it shows what
 * an instrument is, not what this one measures.
 */
public final class InstrumentDrawing {
    /** A shop sees some tens of sizes; whoever types many more has them drawn anew. */
    private static final int REMEMBERED = 200;

    private static final Map<Wanted, InkSheet> DRAWN = new ConcurrentHashMap<>();

    private record Wanted(InstrumentShape instrument, InstrumentView view) {}

    private InstrumentDrawing() {}

    /** A drawing that only decorates: readers of the page aloud skip it. */
    public static String decoration(InstrumentShape instrument, InstrumentView view) {
        return sheet(instrument, view).svg();
    }

    /** A drawing that says something, with its title for those who do not see it. */
    public static String titled(InstrumentShape instrument, InstrumentView view, String title) {
        return sheet(instrument, view).svg(title);
    }

    /** To ink one takes some milliseconds, and every page of a visit shows one. */
    private static InkSheet sheet(InstrumentShape instrument, InstrumentView view) {
        Wanted wanted = new Wanted(instrument, view);
        InkSheet known = DRAWN.get(wanted);
        if (known != null) {
            return known;
        }
        if (DRAWN.size() >= REMEMBERED) {
            DRAWN.clear();
        }
        InkSheet drawn = draw(instrument, view);
        DRAWN.put(wanted, drawn);
        return drawn;
    }

    private static InkSheet draw(InstrumentShape instrument, InstrumentView view) {
        return switch (view) {
            case FRONT -> new FrontDrawing(instrument).draw();
            case BACK -> new BackDrawing(instrument).draw();
            case SIDE -> new SideDrawing(instrument).draw();
            case SCROLL -> new ScrollDrawing(instrument).draw();
        };
    }
}

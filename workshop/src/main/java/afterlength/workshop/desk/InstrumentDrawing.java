package afterlength.workshop.desk;

import afterlength.craft.geometry.InstrumentShape;

/**
 * A line drawing of an instrument as an SVG element, in the manner of a pen on notebook paper. One unit of its view box is one
 * millimetre. The ink is the colour of the text around it; size comes from the page. Drawn from common measures: it shows what
 * an instrument is, not what this one measures.
 */
public final class InstrumentDrawing {
    private InstrumentDrawing() {}

    /** A drawing that only decorates: readers of the page aloud skip it. */
    public static String decoration(InstrumentShape instrument, InstrumentView view) {
        return sheet(instrument, view).svg();
    }

    /** A drawing that says something, with its title for those who do not see it. */
    public static String titled(InstrumentShape instrument, InstrumentView view, String title) {
        return sheet(instrument, view).svg(title);
    }

    private static InkSheet sheet(InstrumentShape instrument, InstrumentView view) {
        return switch (view) {
            case FRONT -> new FrontDrawing(instrument).draw();
            case BACK -> new BackDrawing(instrument).draw();
            case SIDE -> new SideDrawing(instrument).draw();
            case SCROLL -> new ScrollDrawing(instrument).draw();
        };
    }
}

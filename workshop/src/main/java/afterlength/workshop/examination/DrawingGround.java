package afterlength.workshop.examination;

import afterlength.workshop.desk.InstrumentDrawing;
import afterlength.workshop.desk.InstrumentView;
import afterlength.workshop.instrument.DrawnShape;
import afterlength.workshop.instrument.Instrument;
import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Our own drawing of the instrument as ground for marks. It shows what the instrument is and not what it measures, so that a mark on
 * it tells the place and never millimetres.
 *
 * @param svg the drawing, a file of its own
 * @param box left, top, width and height of its view
 */
record DrawingGround(long visitId, InstrumentView view, String name, String svg, ViewBox box) implements MarkGround {
    private static final Pattern VIEW_BOX = Pattern.compile("viewBox=\"(-?\\d+) (-?\\d+) (\\d+) (\\d+)\"");

    record ViewBox(int left, int top, int width, int height) {}

    static DrawingGround of(long visitId, Instrument instrument, InstrumentView view) {
        String name = instrument.name() + ", " + word(view);
        String svg = InstrumentDrawing.titled(DrawnShape.of(instrument), view, name);
        Matcher box = VIEW_BOX.matcher(svg);
        if (!box.find()) {
            throw new IllegalStateException("a drawing without a view box");
        }
        ViewBox seen = new ViewBox(number(box, 1), number(box, 2), number(box, 3), number(box, 4));
        return new DrawingGround(visitId, view, name, sized(svg, seen), seen);
    }

    /** A file shown as a picture needs a size of its own. */
    private static String sized(String svg, ViewBox box) {
        return svg.replaceFirst("<svg ", "<svg width=\"" + box.width() + "\" height=\"" + box.height() + "\" ");
    }

    private static int number(Matcher box, int group) {
        return Integer.parseInt(box.group(group));
    }

    /** "front", as an address has it. */
    static String word(InstrumentView view) {
        return view.name().toLowerCase(Locale.ROOT);
    }

    static @Nullable InstrumentView find(String word) {
        return Arrays.stream(InstrumentView.values())
                .filter(view -> word(view).equals(word))
                .findFirst()
                .orElse(null);
    }

    @Override
    public String title() {
        return "drawing, " + word(view);
    }

    @Override
    public String spoken() {
        return "Line drawing: " + name;
    }

    @Override
    public String page() {
        return "/visits/" + visitId + "/drawings/" + word(view);
    }

    @Override
    public String picture() {
        return page() + "/picture.svg";
    }

    @Override
    public double left() {
        return box.left();
    }

    @Override
    public double top() {
        return box.top();
    }

    @Override
    public double width() {
        return box.width();
    }

    @Override
    public double height() {
        return box.height();
    }

    @Override
    public String unit() {
        return "units of the drawing";
    }

    @Override
    public String backTo() {
        return "/visits/" + visitId + "/examination";
    }

    @Override
    public String backWords() {
        return "Findings";
    }

    @Override
    public @Nullable Photograph photograph() {
        return null;
    }
}

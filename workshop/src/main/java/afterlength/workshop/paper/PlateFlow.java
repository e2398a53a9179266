package afterlength.workshop.paper;

import java.util.ArrayList;
import java.util.List;

/**
 * Fills the room of a 1 : 1 sheet from the top down and begins a new one, under a line, when something does not fit any
 * more. The lower left corner of what is put stands where its caller says; only drawings are moved to the middle.
 */
public final class PlateFlow {
    private static final double TEXT_MM = 3.1;
    private static final double INDENT_MM = 4;
    private static final Stroke TOP_LINE = Stroke.of(Ink.FAINT, 0.1);

    private final double width_mm;
    private final double height_mm;
    private final String title;
    private final String description;
    private final List<Drawing> full = new ArrayList<>();
    private Sketch sketch = new Sketch();
    private double used_mm;

    /** Title and description are those of every plate. */
    public PlateFlow(Bounds room, String title, String description) {
        this.width_mm = room.width_mm();
        this.height_mm = room.height_mm();
        this.title = title;
        this.description = description;
    }

    public double width_mm() {
        return width_mm;
    }

    /** Sets the drawing in the middle, at its true size. */
    public void drawing(Drawing drawing) {
        Bounds bounds = drawing.bounds();
        Point topLeft = reserve(bounds.height_mm());
        double aside_mm = (width_mm - bounds.width_mm()) / 2;
        sketch.put(drawing.moved(aside_mm - bounds.left_mm(), topLeft.y_mm() - bounds.top_mm()));
    }

    /** Takes the given height for something the caller puts on {@link #sketch()} below the corner returned. */
    public Point reserve(double needed_mm) {
        if (used_mm > 0 && used_mm + needed_mm > height_mm) {
            full.add(sketch.drawing(title, description));
            sketch = new Sketch().line(new Point(0, 0), new Point(width_mm, 0), TOP_LINE);
            used_mm = 2;
        }
        Point topLeft = new Point(0, -used_mm);
        used_mm += needed_mm;
        return topLeft;
    }

    public Sketch sketch() {
        return sketch;
    }

    public void gap(double gap_mm) {
        used_mm += gap_mm;
    }

    public void heading(String words) {
        Point topLeft = reserve(TEXT_MM * 1.6);
        sketch.putAll(TextBlock.set(words, topLeft, width_mm, TEXT_MM, Face.SANS_STRONG, Ink.INK)
                .lines());
    }

    /** A paragraph behind a dash. */
    public void dashed(String words) {
        TextBlock measured = text(words, new Point(0, 0), width_mm - INDENT_MM);
        Point topLeft = reserve(measured.height_mm() + 0.2 * TEXT_MM);
        sketch.putAll(text("–", topLeft, width_mm).lines());
        sketch.putAll(
                text(words, topLeft.moved(INDENT_MM, 0), width_mm - INDENT_MM).lines());
    }

    /** Paragraphs one below the other in a column, on the sheet begun; answers the height they took. */
    public double column(List<String> paragraphs, Point topLeft, double column_mm) {
        double down_mm = 0;
        for (String paragraph : paragraphs) {
            TextBlock block = text(paragraph, topLeft.moved(0, -down_mm), column_mm);
            sketch.putAll(block.lines());
            down_mm += block.height_mm() + 0.4 * TEXT_MM;
        }
        return down_mm;
    }

    /** A warning with a rule at its side and a word before it, so that colour is not the only sign. */
    public void caution(String word, String words) {
        double column_mm = width_mm - INDENT_MM;
        double text_mm = text(words, new Point(0, 0), column_mm).height_mm();
        double word_mm = TEXT_MM * 1.4;
        Point topLeft = reserve(word_mm + text_mm);
        Point inner = topLeft.moved(INDENT_MM, 0);
        sketch.putAll(TextBlock.set(word, inner, column_mm, TEXT_MM, Face.SANS_STRONG, Ink.ACCENT)
                .lines());
        sketch.putAll(text(words, inner.moved(0, -word_mm), column_mm).lines());
        Point top = topLeft.moved(0.5, 0);
        sketch.line(top, top.moved(0, -word_mm - text_mm - 0.6), Stroke.of(Ink.ACCENT, 0.7));
    }

    public List<Drawing> plates() {
        List<Drawing> plates = new ArrayList<>(full);
        plates.add(sketch.drawing(title, description));
        return plates;
    }

    private static TextBlock text(String words, Point topLeft, double width_mm) {
        return TextBlock.set(words, topLeft, width_mm, TEXT_MM, Face.SERIF, Ink.INK);
    }
}

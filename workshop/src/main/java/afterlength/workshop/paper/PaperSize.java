package afterlength.workshop.paper;

/**
 * The two sheets that workshops print on. Whatever is drawn stays in a box of 190 × 259 mm, which both hold with at least
 * the 10 mm that a printer needs at every edge, so one drawing serves either.
 */
public enum PaperSize {
    A4(210, 297, "A4"),
    LETTER(215.9, 279.4, "Letter");

    static final double BOX_WIDTH_MM = 190;
    static final double BOX_HEIGHT_MM = 259;

    private final double width_mm;
    private final double height_mm;
    private final String words;

    PaperSize(double width_mm, double height_mm, String words) {
        this.width_mm = width_mm;
        this.height_mm = height_mm;
        this.words = words;
    }

    public double width_mm() {
        return width_mm;
    }

    public double height_mm() {
        return height_mm;
    }

    /** The name on the packet, which is also its name in a style sheet. */
    public String words() {
        return words;
    }

    /** Lower left corner of the common box, which lies in the middle of the sheet. */
    Point boxCorner() {
        return new Point((width_mm - BOX_WIDTH_MM) / 2, (height_mm - BOX_HEIGHT_MM) / 2);
    }
}

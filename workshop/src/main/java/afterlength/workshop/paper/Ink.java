package afterlength.workshop.paper;

import java.util.Locale;

/**
 * What a line or a word means, not which colour it has: on the screen the style sheet decides by the class name (light or
 * dark), on paper the ink below is used. Every ink but {@link #BAND} and {@link #PAPER} keeps 4.5 : 1 against white paper.
 */
public enum Ink {
    /** The thing itself, and all words. */
    INK(0x1F1B16),
    /** What helps to read: dimension lines, ticks, small print. */
    FAINT(0x6E665C),
    /** The one thing to act on: where to cut. */
    ACCENT(0x9A3B1E),
    /** The ground of an uncertain value. */
    BAND(0xEBD9C6),
    /** Bare paper, to lay under words that cross a line. */
    PAPER(0xFFFFFF);

    private final int rgb;

    Ink(int rgb) {
        this.rgb = rgb;
    }

    /** The class a style sheet knows this ink by: {@code ink}, {@code faint}, {@code accent}, {@code band}, {@code paper}. */
    public String cssClass() {
        return name().toLowerCase(Locale.ROOT);
    }

    String hex() {
        return String.format(Locale.ROOT, "#%06x", rgb);
    }

    float red() {
        return (rgb >> 16 & 0xFF) / 255f;
    }

    float green() {
        return (rgb >> 8 & 0xFF) / 255f;
    }

    float blue() {
        return (rgb & 0xFF) / 255f;
    }
}

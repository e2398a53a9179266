package afterlength.workshop.paper;

import java.util.ArrayList;
import java.util.List;

/**
 * Running words on a drawing, broken to a width. A word wider than the block stays whole and stands out of it.
 *
 * @param lines the lines, first one topmost
 * @param height_mm from the top of the block to the foot of the last line
 */
public record TextBlock(List<Words> lines, double height_mm) {
    private static final double LEADING = 1.32;

    public TextBlock {
        lines = List.copyOf(lines);
    }

    /** Sets the words below and to the right of the given corner. */
    public static TextBlock set(String words, Point topLeft, double width_mm, double size_mm, Face face, Ink ink) {
        List<Words> lines = new ArrayList<>();
        for (String line : broken(words, width_mm, size_mm, face)) {
            double down_mm = (lines.size() * LEADING + 1) * size_mm;
            lines.add(new Words(line, topLeft.moved(0, -down_mm), size_mm, Anchor.START, 0, face, ink));
        }
        return new TextBlock(lines, lines.size() * LEADING * size_mm);
    }

    private static List<String> broken(String words, double width_mm, double size_mm, Face face) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : words.strip().split("\\s+", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && Lettering.width_mm(face, longer, size_mm) > width_mm) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        lines.add(line);
        return lines;
    }
}

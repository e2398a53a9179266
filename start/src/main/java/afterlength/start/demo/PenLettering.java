package afterlength.start.demo;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.Map;

/**
 * Small letters drawn with a round pen, for the words on the pictures: a machine without any fonts paints the same picture.
 * Each letter is its breadth and its strokes on a square of 10, x-height 0 to 10 downwards, ascenders from −5, descenders to 14.
 * Only the letters of our own words exist.
 */
final class PenLettering {
    private static final Map<Character, Letter> LETTERS = Map.ofEntries(
            letter('a', 7, "M 7 3 C 6 0 1 -1 0.4 4.6 C 0 11 6 11.4 7 6.6 M 7 0.3 L 7 10"),
            letter('d', 7, "M 7 3 C 6 0 1 -1 0.4 4.6 C 0 11 6 11.4 7 6.6 M 7 -5 L 7 10"),
            letter('e', 7, "M 0.4 5 L 7 5 C 7 -1.6 0.8 -1.6 0.4 4.6 C 0 10.8 5.4 11.6 6.8 8"),
            letter('f', 4.4, "M 4.8 -4.6 C 2.4 -5.6 1.8 -3.6 1.8 -1.6 L 1.8 10 M 0 0.4 L 4.4 0.4"),
            letter('g', 7, "M 7 3 C 6 0 1 -1 0.4 4.6 C 0 11 6 11.4 7 6.6 M 7 0.3 L 7 10.4 C 7 15 2 15 0.8 12.6"),
            letter('h', 6.6, "M 0.4 -5 L 0.4 10 M 0.4 3.6 C 2 -0.8 6.6 -1 6.6 3.6 L 6.6 10"),
            letter('i', 0.8, "M 0.4 0.3 L 0.4 10 M 0.4 -3.6 L 0.4 -3.3"),
            letter(
                    'm',
                    11,
                    "M 0.4 0.3 L 0.4 10 M 0.4 3.4 C 1.6 -0.8 5.7 -1 5.7 3.4 L 5.7 10 M 5.7 3.4 C 6.9 -0.8 11 -1 11 3.4 L 11 10"),
            letter('n', 6.6, "M 0.4 0.3 L 0.4 10 M 0.4 3.6 C 2 -0.8 6.6 -1 6.6 3.6 L 6.6 10"),
            letter('o', 7.2, "M 3.8 0.2 C -0.7 0.2 -0.7 10 3.8 10 C 8.3 10 8.3 0.2 3.8 0.2"),
            letter('p', 7, "M 0.4 0.3 L 0.4 14.6 M 0.4 3 C 1.4 0 6.4 -1 7 4.6 C 7.4 11 1.4 11.4 0.4 6.6"),
            letter('r', 4, "M 0.4 0.3 L 0.4 10 M 0.4 4 C 1.2 1 2.4 0 4.2 0.5"),
            letter(
                    's',
                    5.4,
                    "M 5.2 1.6 C 4 -0.4 0.8 -0.4 0.7 2.4 C 0.6 5.4 5.5 4.2 5.5 7.4 C 5.4 10.8 1.2 10.8 0.2 8.4"),
            letter('t', 4.2, "M 1.6 -3.4 L 1.6 7.8 C 1.6 10 3 10.3 4.4 9.6 M 0 0.4 L 4.2 0.4"),
            letter('w', 9.4, "M 0 0.3 L 2.4 10 L 4.7 0.8 L 7 10 L 9.4 0.3"),
            letter(',', 1, "M 0.8 9.4 C 0.9 10.8 0.4 12 -0.4 12.6"),
            letter(' ', 3, "M 0 0"));

    private static final double GAP = 2.6;
    private static final double PEN = 1.45;

    private record Letter(double breadth, Path2D strokes) {}

    private PenLettering() {}

    /** Writes from the left end of the base line; {@code size} is from the top of tall letters to the base line, in pixels. */
    static void write(Graphics2D pen, String words, double left, double baseLine, double size) {
        double scale = size / 15;
        pen.setStroke(new BasicStroke((float) (PEN * scale), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        double at = left;
        for (int i = 0; i < words.length(); i++) {
            char sign = words.charAt(i);
            Letter letter = LETTERS.get(sign);
            if (letter == null) {
                throw new IllegalArgumentException("letter '" + sign + "' is not drawn; add its strokes");
            }
            AffineTransform place = new AffineTransform(scale, 0, 0, scale, at, baseLine - 10 * scale);
            pen.draw(place.createTransformedShape(letter.strokes()));
            at += (letter.breadth() + GAP) * scale;
        }
    }

    private static Map.Entry<Character, Letter> letter(char sign, double breadth, String strokes) {
        String[] words = strokes.split(" ", -1);
        Path2D path = new Path2D.Double();
        int at = 0;
        while (at < words.length) {
            at += draw(path, words, at);
        }
        return Map.entry(sign, new Letter(breadth, path));
    }

    private static int draw(Path2D path, String[] words, int at) {
        switch (words[at]) {
            case "M" -> path.moveTo(number(words, at + 1), number(words, at + 2));
            case "L" -> path.lineTo(number(words, at + 1), number(words, at + 2));
            default ->
                path.curveTo(
                        number(words, at + 1),
                        number(words, at + 2),
                        number(words, at + 3),
                        number(words, at + 4),
                        number(words, at + 5),
                        number(words, at + 6));
        }
        return words[at].equals("C") ? 7 : 3;
    }

    private static double number(String[] words, int at) {
        return Double.parseDouble(words[at]);
    }
}

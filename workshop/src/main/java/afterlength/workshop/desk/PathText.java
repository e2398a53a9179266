package afterlength.workshop.desk;

import afterlength.craft.geometry.Point;
import java.util.List;

/** Points as the text of an SVG path, in hundredths of a millimetre, each step relative to the one before to keep it short. */
final class PathText {
    private PathText() {}

    static String closed(List<Point> ring) {
        return open(ring) + "z";
    }

    static String open(List<Point> line) {
        StringBuilder text = new StringBuilder();
        long lastX = 0;
        long lastY = 0;
        for (Point point : line) {
            long x = hundredths(point.x_mm());
            long y = hundredths(point.y_mm());
            text.append(text.isEmpty() ? "M" : text.charAt(text.length() - 1) == 'l' ? "" : " ");
            if (text.length() == 1) {
                text.append(number(x)).append(' ').append(number(y)).append('l');
            } else {
                text.append(number(x - lastX)).append(' ').append(number(y - lastY));
            }
            lastX = x;
            lastY = y;
        }
        return text.toString();
    }

    private static long hundredths(double value_mm) {
        return Math.round(value_mm * 100);
    }

    /** Shortest decimal form: 120 hundredths are 1.2, minus 5 are -.05. */
    static String number(long hundredths) {
        String digits = Long.toString(Math.abs(hundredths) / 100);
        long rest = Math.abs(hundredths) % 100;
        String fraction = rest == 0 ? "" : rest % 10 == 0 ? "." + rest / 10 : rest < 10 ? ".0" + rest : "." + rest;
        String whole = digits.equals("0") && !fraction.isEmpty() ? "" : digits;
        return (hundredths < 0 ? "-" : "") + whole + fraction;
    }
}

package afterlength.workshop.setup;

import afterlength.craft.setup.CrossPoint;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the crown out of a path of an SVG drawing: the commands M, L, H, V, C, Q and Z, large (from the origin) or small (from where
 * the pen is), one user unit to the millimetre, y downwards as SVG has it. Curves become sixteen straight pieces, which on a crown
 * differ from them by less than a hundredth of a millimetre. A closed outline, such as a whole template with its
 * sides, is cut at its two ends and the upper edge taken; a path drawn from treble to bass is turned round.
 *
 * <p>Left out: arcs (A), smooth curves (S, T), more than one line, and any transform around the path.
 */
final class SvgPath {
    private static final Pattern DATA = Pattern.compile("\\bd\\s*=\\s*[\"']([^\"']*)[\"']");
    private static final Pattern TOKEN = Pattern.compile(
            "([A-Za-z])|([-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?)|([\\s,]+)|(.)", Pattern.DOTALL);
    private static final String COMMANDS = "M, L, H, V, C, Q and Z";
    private static final int PIECES = 16;
    private static final int MOST_NUMBERS = 20_000;

    private final List<CrossPoint> points = new ArrayList<>();
    private final List<Double> numbers = new ArrayList<>();
    private double x;
    private double y;
    private boolean closed;

    private SvgPath() {}

    static boolean looksLike(String text) {
        return text.startsWith("<") || text.matches("(?s)[Mm][\\s\\d+.-].*");
    }

    static TemplateText read(String text) {
        try {
            return new TemplateText(new SvgPath().crown(data(text)), null);
        } catch (Unreadable unreadable) {
            return TemplateText.wrong(unreadable.problem);
        }
    }

    private static final class Unreadable extends Exception {
        private static final long serialVersionUID = 1;
        private final String problem;

        Unreadable(String problem) {
            super(problem);
            this.problem = problem;
        }
    }

    private static String data(String text) throws Unreadable {
        if (!text.startsWith("<")) {
            return text;
        }
        Matcher matcher = DATA.matcher(text);
        if (!matcher.find()) {
            throw new Unreadable(
                    "The drawing has no path: d=\"…\" was looked for and not found. Paste the <path …/> of the crown.");
        }
        String data = matcher.group(1);
        if (matcher.find()) {
            throw new Unreadable(
                    "The drawing has more than one path; which of them is the crown cannot be told. Paste that one alone.");
        }
        return data;
    }

    private List<CrossPoint> crown(String data) throws Unreadable {
        char command = ' ';
        Matcher token = TOKEN.matcher(data);
        while (token.find()) {
            if (token.group(1) != null) {
                carryOut(command);
                command = token.group(1).charAt(0);
                begin(command);
            } else if (token.group(2) != null) {
                numbers.add(Double.valueOf(token.group(2)));
            } else if (token.group(4) != null) {
                throw new Unreadable("The path holds “" + token.group(4) + "”, which no path has. Paste it anew.");
            }
            if (numbers.size() > MOST_NUMBERS) {
                throw new Unreadable("The path has more than " + MOST_NUMBERS + " numbers. Simplify it.");
            }
        }
        carryOut(command);
        if (points.size() < 2) {
            throw new Unreadable("The path has no line in it; it needs at least two points.");
        }
        return fromBass(closed ? upperEdge() : points);
    }

    private void begin(char command) throws Unreadable {
        if ("MLHVCQZmlhvcqz".indexOf(command) < 0) {
            throw new Unreadable("The path has the command " + command + "; only " + COMMANDS
                    + " are read. Let the drawing program turn it into lines and plain curves.");
        }
        if (closed || (Character.toUpperCase(command) == 'M' && !points.isEmpty())) {
            throw new Unreadable("The path is made of more than one line; the crown is one. Paste that one alone.");
        }
        if (points.isEmpty() && Character.toUpperCase(command) != 'M') {
            throw new Unreadable(
                    "The path begins with " + command + "; it must begin with M. Paste it from its beginning.");
        }
        if (Character.toUpperCase(command) == 'Z') {
            closed = true;
        }
    }

    private void carryOut(char command) throws Unreadable {
        int each = numbersOf(command);
        if (each == 0 ? !numbers.isEmpty() : numbers.isEmpty() || numbers.size() % each != 0) {
            throw new Unreadable(
                    "After " + (command == ' ' ? "its beginning" : "the command " + command) + " the path has "
                            + numbers.size() + (numbers.size() == 1 ? " number" : " numbers") + "; " + wanted(each)
                            + ". A number is missing or too many.");
        }
        for (int at = 0; at < numbers.size(); at += each) {
            carryOut(command, numbers.subList(at, at + each));
        }
        numbers.clear();
    }

    private static String wanted(int each) {
        return each == 0
                ? "none belongs there"
                : each == 1 ? "at least one belongs there" : "they come in groups of " + each;
    }

    private static int numbersOf(char command) {
        return switch (Character.toUpperCase(command)) {
            case 'M', 'L' -> 2;
            case 'H', 'V' -> 1;
            case 'C' -> 6;
            case 'Q' -> 4;
            default -> 0;
        };
    }

    private void carryOut(char command, List<Double> n) {
        double fromX = Character.isLowerCase(command) ? x : 0;
        double fromY = Character.isLowerCase(command) ? y : 0;
        switch (Character.toUpperCase(command)) {
            case 'H' -> line(fromX + n.get(0), y);
            case 'V' -> line(x, fromY + n.get(0));
            case 'C' ->
                curve(
                        new double[] {x, fromX + n.get(0), fromX + n.get(2), fromX + n.get(4)},
                        new double[] {y, fromY + n.get(1), fromY + n.get(3), fromY + n.get(5)});
            case 'Q' ->
                curve(
                        new double[] {x, fromX + n.get(0), fromX + n.get(2)},
                        new double[] {y, fromY + n.get(1), fromY + n.get(3)});
            default -> line(fromX + n.get(0), fromY + n.get(1));
        }
    }

    private void line(double toX, double toY) {
        x = toX;
        y = toY;
        points.add(new CrossPoint(toX, 0 - toY));
    }

    private void curve(double[] across, double[] down) {
        for (int i = 1; i <= PIECES; i++) {
            line(bezier(across.clone(), (double) i / PIECES), bezier(down.clone(), (double) i / PIECES));
        }
    }

    /** De Casteljau: halfway points of halfway points, at t instead of a half. */
    private static double bezier(double[] control, double t) {
        for (int left = control.length - 1; left > 0; left--) {
            for (int i = 0; i < left; i++) {
                control[i] += t * (control[i + 1] - control[i]);
            }
        }
        return control[0];
    }

    /** Of the two ways from the leftmost to the rightmost place of a closed outline, the one that runs higher. */
    private List<CrossPoint> upperEdge() {
        int left = 0;
        int right = 0;
        for (int i = 1; i < points.size(); i++) {
            left = isLeft(points.get(i), points.get(left)) ? i : left;
            right = isRight(points.get(i), points.get(right)) ? i : right;
        }
        List<CrossPoint> one = walk(left, right);
        List<CrossPoint> other = walk(right, left);
        return highest(one) >= highest(other) ? one : other;
    }

    private static boolean isLeft(CrossPoint a, CrossPoint b) {
        return a.y_mm() < b.y_mm() || (a.y_mm() == b.y_mm() && a.z_mm() > b.z_mm());
    }

    private static boolean isRight(CrossPoint a, CrossPoint b) {
        return a.y_mm() > b.y_mm() || (a.y_mm() == b.y_mm() && a.z_mm() > b.z_mm());
    }

    private List<CrossPoint> walk(int from, int to) {
        List<CrossPoint> way = new ArrayList<>();
        for (int i = from; i != to; i = (i + 1) % points.size()) {
            way.add(points.get(i));
        }
        way.add(points.get(to));
        return way;
    }

    private static double highest(List<CrossPoint> way) {
        return way.stream().mapToDouble(CrossPoint::z_mm).average().orElseThrow();
    }

    private static List<CrossPoint> fromBass(List<CrossPoint> points) {
        List<CrossPoint> ordered = new ArrayList<>(points);
        if (ordered.get(0).y_mm() > ordered.get(ordered.size() - 1).y_mm()) {
            Collections.reverse(ordered);
        }
        return ordered;
    }
}

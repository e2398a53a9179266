package afterlength.craft.access;

import afterlength.craft.geometry.Outline;
import afterlength.craft.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The openings of the hole for a thing of some breadth that moves along a heading: where on its line the whole breadth lies over the
 * hole.
 */
final class Gaps {
    private final double[] ahead;
    private final double[] aside;

    private Gaps(double[] ahead, double[] aside) {
        this.ahead = ahead;
        this.aside = aside;
    }

    static Gaps along(Outline hole, double heading_deg) {
        List<Point> points = hole.points();
        double cosine = Math.cos(Math.toRadians(heading_deg));
        double sine = Math.sin(Math.toRadians(heading_deg));
        return new Gaps(
                points.stream()
                        .mapToDouble(p -> p.x_mm() * cosine + p.y_mm() * sine)
                        .toArray(),
                points.stream()
                        .mapToDouble(p -> p.y_mm() * cosine - p.x_mm() * sine)
                        .toArray());
    }

    /** From left to right, for what reaches from one side to the other. */
    List<Span> between(double right_mm, double left_mm) {
        List<Span> gaps = new ArrayList<>();
        double reached = Double.NEGATIVE_INFINITY;
        for (Span edge : edges(right_mm, left_mm)) {
            if (edge.low() > reached && isInside((reached + edge.low()) / 2, (right_mm + left_mm) / 2)) {
                gaps.add(new Span(reached, edge.low()));
            }
            reached = Math.max(reached, edge.high());
        }
        return gaps;
    }

    private List<Span> edges(double right_mm, double left_mm) {
        List<Span> edges = new ArrayList<>();
        for (int i = 0, before = ahead.length - 1; i < ahead.length; before = i++) {
            double low = Math.min(aside[i], aside[before]);
            double high = Math.max(aside[i], aside[before]);
            if (low < left_mm && high > right_mm) {
                double from = at(Math.max(low, right_mm), before, i);
                double to = at(Math.min(high, left_mm), before, i);
                edges.add(low == high ? span(ahead[i], ahead[before]) : span(from, to));
            }
        }
        edges.sort(Comparator.comparingDouble(Span::low));
        return edges;
    }

    private static Span span(double one, double other) {
        return new Span(Math.min(one, other), Math.max(one, other));
    }

    private double at(double side, int from, int to) {
        return ahead[from] + (ahead[to] - ahead[from]) * (side - aside[from]) / (aside[to] - aside[from]);
    }

    /** By counting the edges to one side. */
    private boolean isInside(double x, double y) {
        boolean inside = false;
        for (int i = 0, before = ahead.length - 1; i < ahead.length; before = i++) {
            if (aside[i] > y != aside[before] > y && x < at(y, before, i)) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** Half way along the hole. */
    double middle_mm() {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double each : ahead) {
            low = Math.min(low, each);
            high = Math.max(high, each);
        }
        return (low + high) / 2;
    }

    double leftmost_mm() {
        double most = Double.NEGATIVE_INFINITY;
        for (double each : aside) {
            most = Math.max(most, each);
        }
        return most;
    }

    double rightmost_mm() {
        double most = Double.POSITIVE_INFINITY;
        for (double each : aside) {
            most = Math.min(most, each);
        }
        return most;
    }
}

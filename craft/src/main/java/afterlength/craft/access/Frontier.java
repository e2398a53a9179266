package afterlength.craft.access;

import afterlength.craft.geometry.Outline;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The thickest section for every width. The curve falls, and it is its own mirror image: what passes as w × t passes as t × w. So
 * only sections at least as wide as thick are looked for. Where two neighbours lie apart in width and in thickness, one more is
 * looked for between them, first where they lie furthest apart.
 *
 * <p>Each point is within {@link #TOLERANCE_MM} of the true curve, and each section named does fit. Between two points the true
 * curve runs somewhere in the box they span.
 */
public record Frontier(List<Section> sections) {
    public static final double TOLERANCE_MM = 0.05;

    /** Corners of the outline are left out if they lie no further than this from the edge without them; it counts four times. */
    static final double SIMPLIFIED_MM = 0.006;

    /** What the search over turns may cost. */
    static final double SEARCHED_MM = 0.026;

    private static final int MOST_SEARCHES = 13;
    /** Neighbours this near to each other, in width or in thickness, need none between them. */
    private static final double NEAR_MM = 0.25;

    public Frontier {
        sections = List.copyOf(sections);
    }

    static Frontier of(HoleSearch hole) {
        return new Frontier(new Tracing(hole).trace());
    }

    public static Frontier of(Outline hole) {
        return of(new HoleSearch(hole));
    }

    private static final class Tracing {
        private final HoleSearch hole;
        private final TreeMap<Double, Double> thicknesses = new TreeMap<>();
        private int searches;

        Tracing(HoleSearch hole) {
            this.hole = hole;
        }

        List<Section> trace() {
            double longest_mm = hole.longest_mm();
            thicknesses.put(longest_mm, 0.0);
            approachSquare(longest_mm);
            while (searches < MOST_SEARCHES) {
                Optional<Double> width = findWidthToLookAt();
                if (width.isEmpty()) {
                    break;
                }
                look(width.get());
            }
            return sections();
        }

        /** Steps down in width until a section is as thick as it is wide; the last one lies close to the square. */
        private void approachSquare(double longest_mm) {
            double low = 0;
            double high = longest_mm;
            while (high - low > NEAR_MM && searches < MOST_SEARCHES / 2) {
                double middle = low == 0 ? Math.min(high / 2, 2 * Math.sqrt(hole.area_mm2())) : (low + high) / 2;
                double thickness = look(Math.max(middle, ThickestSection.THINNEST_MM));
                if (thickness >= middle) {
                    low = Math.max(low, middle);
                    high = Math.min(high, thickness);
                } else {
                    high = middle;
                    low = Math.max(low, thickness);
                }
            }
        }

        private double look(double width) {
            searches++;
            double thickness = hole.findThickest(width)
                    .map(placed -> placed.section().thickness_mm())
                    .orElse(0.0);
            thicknesses.put(Math.max(width, thickness), Math.min(width, thickness));
            return thickness;
        }

        /** Between the two neighbours that leave the most open; wider than thick only. */
        private Optional<Double> findWidthToLookAt() {
            Double found = null;
            double worst = NEAR_MM;
            Double before = null;
            for (Double width : thicknesses.keySet()) {
                if (before != null && worst < apart(before, width)) {
                    worst = apart(before, width);
                    found = (before + width) / 2;
                }
                before = width;
            }
            return Optional.ofNullable(found);
        }

        private double apart(double narrow, double wide) {
            double higher = thicknesses.getOrDefault(narrow, 0.0);
            boolean thin = wide < higher || higher < ThickestSection.THINNEST_MM;
            return thin ? 0 : Math.min(wide - narrow, higher - thicknesses.getOrDefault(wide, 0.0));
        }

        /** From the widest down, for what fits wide fits narrow; then the same seen from the other side. */
        private List<Section> sections() {
            List<Section> wide = new ArrayList<>();
            double thickest = 0;
            for (Map.Entry<Double, Double> found : thicknesses.descendingMap().entrySet()) {
                thickest = Math.max(thickest, found.getValue());
                if (thickest >= ThickestSection.THINNEST_MM) {
                    wide.add(new Section(found.getKey(), thickest));
                }
            }
            List<Section> both = new ArrayList<>();
            wide.forEach(section -> both.add(section.onItsSide()));
            Collections.reverse(wide);
            wide.stream()
                    .filter(section -> section.width_mm() > section.thickness_mm())
                    .forEach(both::add);
            return both;
        }
    }
}

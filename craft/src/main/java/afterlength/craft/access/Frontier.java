package afterlength.craft.access;

import afterlength.craft.geometry.Outline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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

    /** What leaving out corners of the outline may cost in each direction, and what the search over turns may. */
    static final double SIMPLIFIED_MM = 0.01;

    static final double SEARCHED_MM = 0.03;

    private static final int MOST_SEARCHES = 24;
    /** Neighbours this near to each other, in width or in thickness, need none between them. */
    private static final double NEAR_MM = 0.2;

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
            thicknesses.put(width, thickness);
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

        /** Both halves of the curve; a later section never thicker than one before it. */
        private List<Section> sections() {
            List<Section> both = new ArrayList<>();
            thicknesses.forEach((width, thickness) -> {
                if (thickness >= ThickestSection.THINNEST_MM) {
                    Section section = new Section(width, thickness);
                    both.add(section);
                    both.add(section.onItsSide());
                }
            });
            both.sort(Comparator.comparingDouble(Section::width_mm).thenComparing(s -> -s.thickness_mm()));
            return falling(both);
        }

        /** From the widest down: what fits wide fits narrow, so a point that lies under a wider one is no news. */
        private static List<Section> falling(List<Section> sections) {
            List<Section> falling = new ArrayList<>();
            double thickest = 0;
            for (int i = sections.size() - 1; i >= 0; i--) {
                if (sections.get(i).thickness_mm() > thickest) {
                    thickest = sections.get(i).thickness_mm();
                    falling.add(0, sections.get(i));
                }
            }
            return falling;
        }
    }
}

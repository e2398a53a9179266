package afterlength.workshop.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Hatching covers an area: the sum of its lines times their distance tends to the area, for any shape and turn. */
class HatchingPropertyTest {
    static LongStream seeds() {
        return LongStream.rangeClosed(1, 50);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void lengthTimesDistanceIsTheArea(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Point> star = star(random);
        double distance_mm = 0.02;
        double hatched_mm2 = Hatching.of(star, distance_mm, random.nextDouble(180), Stroke.of(Ink.FAINT, 0.1)).stream()
                .mapToDouble(line -> line.length_mm() * distance_mm)
                .sum();
        // A line stands for a strip 0.02 mm broad; on stars of 20 mm the ends of the strips stay within half a percent.
        assertThat(hatched_mm2).as("seed %d", seed).isCloseTo(area_mm2(star), within(0.005 * area_mm2(star)));
    }

    private static List<Point> star(SplittableRandom random) {
        List<Point> points = new ArrayList<>();
        int corners = 5 + random.nextInt(20);
        for (int i = 0; i < corners; i++) {
            double radius_mm = 5 + random.nextDouble(15);
            points.add(new Point(radius_mm, 0).turned(360.0 * i / corners));
        }
        return points;
    }

    private static double area_mm2(List<Point> points) {
        double twice = 0;
        for (int i = 0; i < points.size(); i++) {
            Point from = points.get(i);
            Point to = points.get((i + 1) % points.size());
            twice += from.x_mm() * to.y_mm() - to.x_mm() * from.y_mm();
        }
        return Math.abs(twice) / 2;
    }
}

package afterlength.craft.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class CurvePropertyTest {
    private static final Point CENTRE = Point.of(10, 20);

    @Test
    void arcKeepsItsDistanceFromTheCentre() {
        Curve circle = CurvePen.at(CENTRE.plus(5, 0), 90).arcAround(CENTRE, 360).lift();
        // A quarter circle as one cubic strays by 0.03 % of the radius.
        assertThat(circle.points(0.1))
                .allSatisfy(point -> assertThat(point.distanceTo_mm(CENTRE)).isEqualTo(5, within(0.002)));
        assertThat(circle.end().distanceTo_mm(circle.start())).isLessThan(1e-9);
    }

    @Test
    void pointsLieNoFurtherApartThanTheStep() {
        List<Point> points = BodyOutline.of(InstrumentShape.cello().body()).points(2);
        for (int i = 1; i < points.size(); i++) {
            double gap_mm = points.get(i).distanceTo_mm(points.get(i - 1));
            // The corner ends are straight and need no points between.
            assertThat(gap_mm)
                    .isLessThan(Math.max(2, InstrumentShape.cello().body().cornerWidth_mm() + 0.01));
        }
    }

    @Test
    void partsThatDoNotMeetAreRefused() {
        Curve first = Curve.line(Point.of(0, 0), Point.of(1, 0));
        assertThatThrownBy(() -> first.then(Curve.line(Point.of(2, 0), Point.of(3, 0))))
                .hasMessage("curve ends at Point[x_mm=1.0, y_mm=0.0] but goes on at Point[x_mm=2.0, y_mm=0.0];"
                        + " parts must meet within 1.0E-6 mm");
    }

    @Test
    void edgeUnderAnotherFigureIsLeftOut() {
        Outline square = square(0, 10);
        List<List<Point>> open = square.edgeOutside(List.of(square(5, 15)));
        assertThat(open).hasSize(1);
        assertThat(length_mm(open.get(0))).isEqualTo(30, within(1e-9));
    }

    @Test
    void hatchingStaysInsideTheFigure() {
        List<List<Point>> lines = square(0, 10).hatched(0, 1);
        assertThat(lines).hasSizeBetween(10, 11);
        assertThat(lines).allSatisfy(line -> assertThat(length_mm(line)).isEqualTo(10, within(1e-9)));
    }

    private static Outline square(double from_mm, double to_mm) {
        return new Outline(List.of(
                Point.of(from_mm, from_mm),
                Point.of(to_mm, from_mm),
                Point.of(to_mm, to_mm),
                Point.of(from_mm, to_mm)));
    }

    private static double length_mm(List<Point> line) {
        double length_mm = 0;
        for (int i = 1; i < line.size(); i++) {
            length_mm += line.get(i).distanceTo_mm(line.get(i - 1));
        }
        return length_mm;
    }
}

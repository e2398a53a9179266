package afterlength.craft.setup;

import java.util.Comparator;
import java.util.List;

/** A crown of straight pieces, y growing from point to point. */
public record CrownPolyline(List<CrossPoint> vertices) implements CrownCurve {
    public CrownPolyline {
        vertices = List.copyOf(vertices);
    }

    @Override
    public double height_mm(double y_mm) {
        int right = 1;
        while (right < vertices.size() - 1 && vertices.get(right).y_mm() < y_mm) {
            right++;
        }
        CrossPoint a = vertices.get(right - 1);
        CrossPoint b = vertices.get(right);
        return a.z_mm() + (b.z_mm() - a.z_mm()) * (y_mm - a.y_mm()) / (b.y_mm() - a.y_mm());
    }

    @Override
    public CrossPoint highest() {
        return vertices.stream()
                .max(Comparator.comparingDouble(CrossPoint::z_mm))
                .orElseThrow();
    }

    /** The corners themselves, however many are asked for: a template keeps its own points. */
    @Override
    public List<CrossPoint> points(int count) {
        return vertices;
    }
}

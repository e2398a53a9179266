package afterlength.workshop.retouch;

import afterlength.sight.camera.Pixel;
import afterlength.workshop.examination.DrawnMark;
import afterlength.workshop.examination.Photograph;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One of the two photographs, as the page shows it: the piece around the line, with what was read drawn on it. */
record LineView(String moment, LineSight sight, DrawnMark mark, Photograph photograph) {
    private static final double RIM_PX = 40;

    String line() {
        return drawn(mark.points());
    }

    private static String drawn(List<Pixel> points) {
        return points.stream()
                .map(pixel -> Math.round(pixel.x()) + "," + Math.round(pixel.y()))
                .collect(Collectors.joining(" "));
    }

    /** The piece of the photograph that holds all lines. */
    String viewBox() {
        List<double[]> places = Stream.concat(Stream.of(line()), sight.untouchedLines().stream())
                .flatMap(points -> Stream.of(points.split(" ")))
                .map(LineView::place)
                .toList();
        double left = places.stream().mapToDouble(place -> place[0]).min().orElse(0) - RIM_PX;
        double top = places.stream().mapToDouble(place -> place[1]).min().orElse(0) - RIM_PX;
        double right = places.stream().mapToDouble(place -> place[0]).max().orElse(1) + RIM_PX;
        double bottom = places.stream().mapToDouble(place -> place[1]).max().orElse(1) + RIM_PX;
        return Math.round(left) + " " + Math.round(top) + " " + Math.round(right - left) + " "
                + Math.round(bottom - top);
    }

    private static double[] place(String point) {
        int comma = point.indexOf(',');
        return new double[] {
            Double.parseDouble(point.substring(0, comma)), Double.parseDouble(point.substring(comma + 1))
        };
    }
}

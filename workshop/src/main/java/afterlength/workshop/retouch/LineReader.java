package afterlength.workshop.retouch;

import afterlength.craft.colour.ColourClass;
import afterlength.craft.colour.LineSearch;
import afterlength.craft.colour.LineVisibility;
import afterlength.craft.colour.LinearPicture;
import afterlength.craft.geometry.Point;
import afterlength.sight.camera.Pixel;
import afterlength.workshop.desk.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Reads how far one line stands out in one photograph. The ± has two parts: what two places in one photograph may differ by though
 * they do not ({@link ColourClass#ONE_PHOTOGRAPH}), and how much less the line reads a tenth of a millimetre beside its best place.
 */
final class LineReader {
    static final double DISTANCE_MM = 400;

    /** More than this is not gained by finer pixels and costs time. */
    private static final double FINEST_PX_MM = 12;

    /** Some 170 mm of a line along an axis; beyond it the page would wait too long. */
    private static final double LARGEST_MM2 = 6000;

    private static final double BESIDE_MM = 17;
    private static final double FLANK_MM = 3.2;

    private final LinePicture picture;
    private final long markId;
    private final List<Point> line;
    private final List<List<Point>> chosen;

    private LineReader(LinePicture picture, long markId, List<Pixel> line, List<List<Pixel>> chosen) {
        this.picture = picture;
        this.markId = markId;
        this.line = places(picture.scale(), line);
        this.chosen = chosen.stream().map(one -> places(picture.scale(), one)).toList();
    }

    /**
     * Reads a line.
     *
     * @param chosen lines on varnish that was not touched; none for those beside the line
     */
    static LineAnswer read(LinePicture picture, long markId, List<Pixel> line, List<List<Pixel>> chosen) {
        return new LineReader(picture, markId, line, chosen).read();
    }

    private static List<Point> places(Scale scale, List<Pixel> pixels) {
        return pixels.stream().map(scale::place).toList();
    }

    private LineAnswer read() {
        double px_mm = picture.scale().fewestPixelsPerMm(line);
        if (px_mm < LineVisibility.COARSEST_PIXELS_PER_MM) {
            return new LineAnswer.Refused("This picture has " + Figures.fixed(px_mm, 1)
                    + " pixels to the millimetre at the line; 10 or more are needed. Take it from nearer.");
        }
        Optional<Box> box = Box.around(all(), chosen.isEmpty() ? BESIDE_MM : FLANK_MM, FLANK_MM, picture);
        if (box.isEmpty()) {
            return new LineAnswer.Refused(
                    "The line lies too near the rim of this picture. Take one with 2 cm of varnish around the line.");
        }
        if (box.get().area_mm2() > LARGEST_MM2) {
            return new LineAnswer.Refused(
                    "The line and what it is compared with take "
                            + Figures.fixed(box.get().area_mm2() / 100, 0)
                            + " cm² of this picture; at most 60 are read at once. Mark a piece of the line, up to about 10 cm.");
        }
        return read(box.get(), px_mm);
    }

    private LineAnswer read(Box box, double px_mm) {
        LinearPicture light = new LightField(picture.upright(), picture.scale())
                .of(box.corner(), box.opposite(), Math.min(FINEST_PX_MM, px_mm), px_mm);
        Optional<LineVisibility> seen = LineSearch.near(
                light, box.within(line), chosen.stream().map(box::within).toList(), DISTANCE_MM);
        return seen.<LineAnswer>map(read -> new LineAnswer.Read(
                        LineSight.of(markId, read, plusMinus(read), px_mm, untouched(box), caveats())))
                .orElseGet(() -> new LineAnswer.Refused(
                        "This picture shows no varnish 8 to 14 mm beside the whole line to compare with. Mark a line on varnish"
                                + " that was not touched, and choose it below."));
    }

    private double plusMinus(LineVisibility seen) {
        ColourClass known = ColourClass.ONE_PHOTOGRAPH;
        double colour = picture.warm() ? known.underLamp().orElseThrow() : known.typical();
        return Math.hypot(colour, seen.beside());
    }

    private List<List<Point>> all() {
        List<List<Point>> all = new ArrayList<>(chosen);
        all.add(line);
        return all;
    }

    /** Those lines that lie wholly in the picture, for the drawing. */
    private List<String> untouched(Box box) {
        return (chosen.isEmpty() ? LineSearch.beside(line) : chosen)
                .stream().filter(box::holds).map(this::drawn).toList();
    }

    private String drawn(List<Point> places) {
        return places.stream()
                .map(picture.scale()::pixel)
                .map(pixel -> Math.round(pixel.x()) + "," + Math.round(pixel.y()))
                .collect(Collectors.joining(" "));
    }

    private List<String> caveats() {
        return picture.caveats();
    }
}

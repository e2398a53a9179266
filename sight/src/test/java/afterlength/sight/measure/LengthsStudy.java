package afterlength.sight.measure;

import afterlength.craft.geometry.Point;
import afterlength.sight.camera.Pixel;
import afterlength.sight.camera.View;
import afterlength.sight.card.Card;
import afterlength.sight.picture.PictureFile;
import afterlength.sight.rendered.Jpeg;
import afterlength.sight.rendered.Renderer;
import afterlength.sight.rendered.Scene;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;

/**
 * Rendered photographs of the body card with lengths over a field of 355 × 210 mm, each picture with its own camera, print,
 * light, blur and noise. What the program is told is what a person would tell it: the noted focal length rounded to a whole
 * millimetre, the check lines read to some hundredths, marks set by a hand that misses by a pixel. Run {@link #main} for all 300; the test
 * runs the first few. Lengths lie in the plane of the card, whose paper is not quite flat.
 */
final class LengthsStudy {
    static final int ALL = 300;

    /** As far as the ± takes into account: one pixel a point, a ruler's 0.05 mm, paper 0.2 mm up or down. */
    private static final double HAND_PX = 1;

    private static final double RULER_MM = 0.05;
    private static final double PAPER_MM = 0.2;
    private static final int LENGTHS = 8;

    /**
     * One length.
     *
     * @param instrument_mm error of the method with marks set exactly, on exactly flat paper
     * @param whole_mm error with hand and paper
     */
    record Length(
            long seed, double tilt_deg, double true_mm, double instrument_mm, double whole_mm, double plusMinus_mm) {
        boolean covered() {
            return Math.abs(whole_mm) <= plusMinus_mm;
        }
    }

    private final SplittableRandom random;
    private final long seed;

    private LengthsStudy(long seed) {
        this.seed = seed;
        this.random = new SplittableRandom(seed);
    }

    static List<Length> picture(long seed) {
        return new LengthsStudy(seed).measured();
    }

    private double between(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    private double off(double deviation) {
        return deviation * random.nextGaussian();
    }

    private Scene scene() {
        double focalShare = between(0.70, 0.80);
        Scene.Camera camera = new Scene.Camera(
                focalShare,
                between(-0.02, 0.02),
                off(6),
                off(6),
                between(10, 40),
                between(0, 360),
                90 + between(-20, 20),
                between(400, 460),
                between(70, 110),
                between(120, 150));
        Scene plain = Scene.of(Card.BODY, 4032, camera);
        double across = between(0.985, 1.015);
        double along = between(0.985, 1.015);
        return new Scene(
                Card.BODY,
                plain.view(),
                plain.width_px(),
                plain.height_px(),
                across,
                along,
                between(-0.02, 0.08),
                between(0.6, 1.4),
                between(0.5, 3),
                between(0, 0.5),
                between(0.8, 0.95));
    }

    private List<Length> measured() {
        Scene scene = scene();
        Print told = Print.checked(100 * scene.across() + off(RULER_MM), 100 * scene.along() + off(RULER_MM));
        MeasuredPhoto photo = photo(scene, told);
        List<Length> lengths = new ArrayList<>();
        while (lengths.size() < LENGTHS) {
            Point from = Point.of(between(-10, 200), between(-60, 295));
            Point to = Point.of(between(-10, 200), between(-60, 295));
            if (from.distanceTo_mm(to) >= 20 && inside(scene, from) && inside(scene, to)) {
                lengths.add(length(scene, photo, from, to));
            }
        }
        return lengths;
    }

    private static boolean inside(Scene scene, Point place) {
        Pixel pixel = scene.view().pixel(place, 0);
        return pixel.x() > 5 && pixel.y() > 5 && pixel.x() < scene.width_px() - 5 && pixel.y() < scene.height_px() - 5;
    }

    private MeasuredPhoto photo(Scene scene, Print told) {
        double focal35_mm =
                scene.view().lens().focal_px() / Math.hypot(scene.width_px(), scene.height_px()) * Math.hypot(36, 24);
        byte[] file = Jpeg.noted(
                Renderer.jpeg(scene, seed), 1, (int) Math.round(focal35_mm), scene.width_px(), scene.height_px());
        PhotoAnswer answer =
                PhotoMeasuring.of(new PictureFile("photo.jpg", file), PhotoRequest.of("body", told), Progress.SILENT);
        if (answer instanceof MeasuredPhoto photo) {
            return photo;
        }
        throw new AssertionError(
                "seed " + seed + " at a tilt of " + scene.view().tilt_deg() + ": " + answer);
    }

    private Length length(Scene scene, MeasuredPhoto photo, Point from, Point to) {
        double true_mm = from.distanceTo_mm(to);
        View view = scene.view();
        MarkAnswer.Line exact = read(photo, view.pixel(from, 0), view.pixel(to, 0));
        double paper_mm = off(PAPER_MM);
        MarkAnswer.Line byHand = read(photo, missed(view.pixel(from, paper_mm)), missed(view.pixel(to, paper_mm)));
        return new Length(
                seed,
                view.tilt_deg(),
                true_mm,
                exact.length_mm() - true_mm,
                byHand.length_mm() - true_mm,
                byHand.terms_mm().plusMinus());
    }

    private Pixel missed(Pixel pixel) {
        return new Pixel(pixel.x() + off(HAND_PX), pixel.y() + off(HAND_PX));
    }

    private static MarkAnswer.Line read(MeasuredPhoto photo, Pixel from, Pixel to) {
        return (MarkAnswer.Line) photo.measure(new Mark("length", MarkKind.LINE, List.of(from, to), Height.IN_PLANE));
    }

    static double quantile(List<Length> lengths, double share, ToDoubleFunction<Length> value) {
        double[] sorted = lengths.stream().mapToDouble(value).sorted().toArray();
        return sorted[(int) Math.min(sorted.length - 1L, Math.round(share * (sorted.length - 1)))];
    }

    static double coverage_pct(List<Length> lengths) {
        return 100.0 * lengths.stream().filter(Length::covered).count() / lengths.size();
    }

    static String summary(List<Length> lengths) {
        return String.format(
                Locale.ROOT,
                "%d lengths: error of the method 50 %% %.3f, 95 %% %.3f, largest %.3f mm; with hand and paper 95 %% %.3f mm;"
                        + " median ± %.3f mm, 95 %% ± %.3f mm; covered %.1f %%",
                lengths.size(),
                quantile(lengths, 0.5, one -> Math.abs(one.instrument_mm())),
                quantile(lengths, 0.95, one -> Math.abs(one.instrument_mm())),
                quantile(lengths, 1, one -> Math.abs(one.instrument_mm())),
                quantile(lengths, 0.95, one -> Math.abs(one.whole_mm())),
                quantile(lengths, 0.5, Length::plusMinus_mm),
                quantile(lengths, 0.95, Length::plusMinus_mm),
                coverage_pct(lengths));
    }

    /** All pictures, or those from the first argument to before the second; every length on a line, then the summary. */
    public static void main(String[] arguments) {
        long from = arguments.length > 1 ? Long.parseLong(arguments[0]) : 0;
        long to = arguments.length > 1 ? Long.parseLong(arguments[1]) : ALL;
        List<Length> all = new ArrayList<>();
        int refused = 0;
        for (long seed = from; seed < to; seed++) {
            try {
                List<Length> lengths = picture(seed);
                lengths.forEach(System.out::println);
                all.addAll(lengths);
            } catch (AssertionError notMeasured) {
                refused++;
                System.out.println(notMeasured.getMessage());
            }
        }
        System.out.println((to - from) + " pictures, " + refused + " refused");
        System.out.println(summary(all));
        for (int tilt_deg = 10; tilt_deg < 40; tilt_deg += 10) {
            int least_deg = tilt_deg;
            List<Length> some = all.stream()
                    .filter(one -> one.tilt_deg() >= least_deg && one.tilt_deg() < least_deg + 10)
                    .toList();
            System.out.println("tilt " + least_deg + " to " + (least_deg + 10) + " degrees: " + summary(some));
        }
    }
}

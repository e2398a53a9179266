package afterlength.sight.measure;

import afterlength.craft.geometry.Point;
import afterlength.sight.camera.LensCalibrationAnswer;
import afterlength.sight.camera.Pixel;
import afterlength.sight.card.Card;
import afterlength.sight.picture.CameraKey;
import afterlength.sight.picture.PictureFile;
import afterlength.sight.rendered.RenderedCamera;
import afterlength.sight.rendered.Scene;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * The same rendered photographs measured twice: with a calibration of their camera, and with what the file notes alone. Each
 * camera is calibrated from five pictures of a body card whose check lines were read to 0.05 mm. Marks are set by a hand that
 * misses by a pixel, on paper that lies 0.2 mm up or down, as in {@link LengthsStudy}.
 */
final class CalibrationStudy {
    private static final int PICTURE_PX = 4032;
    private static final double HAND_PX = 1;
    private static final double RULER_MM = 0.05;
    private static final double PAPER_MM = 0.2;
    private static final int LENGTHS = 8;

    /** One kind of later picture: which card, slanted between, lengths so far beside the card. */
    enum Kind {
        BODY_FROM_ABOVE(Card.BODY, 0, 10, 60),
        BODY_SLANTED(Card.BODY, 10, 40, 60),
        POCKET_FROM_ABOVE(Card.POCKET, 0, 10, 150),
        POCKET_SLANTED(Card.POCKET, 10, 40, 150);

        private final Card card;
        private final double leastTilt_deg;
        private final double mostTilt_deg;
        private final double beside_mm;

        Kind(Card card, double leastTilt_deg, double mostTilt_deg, double beside_mm) {
            this.card = card;
            this.leastTilt_deg = leastTilt_deg;
            this.mostTilt_deg = mostTilt_deg;
            this.beside_mm = beside_mm;
        }

        boolean isPocket() {
            return card == Card.POCKET;
        }
    }

    /** One length, measured both ways: error with marks set exactly, error with hand and paper, the stated ±. */
    record Length(Kind kind, Read noted, Read calibrated) {}

    record Read(double method_mm, double whole_mm, double plusMinus_mm) {
        boolean covered() {
            return Math.abs(whole_mm) <= plusMinus_mm;
        }
    }

    private final SplittableRandom random;
    private final RenderedCamera camera;
    private final long seed;

    private CalibrationStudy(long seed) {
        this.seed = seed;
        random = new SplittableRandom(1000 + seed);
        camera = new RenderedCamera("Invented Camera", PICTURE_PX, seed);
    }

    static List<Length> camera(long seed) {
        return new CalibrationStudy(seed).lengths();
    }

    private double between(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    private double off(double deviation) {
        return deviation * random.nextGaussian();
    }

    private Print print() {
        return Print.checked(100 + off(RULER_MM), 100 + off(RULER_MM));
    }

    private List<Length> lengths() {
        KnownLens known = known();
        List<Length> lengths = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            lengths.addAll(later(kind, known));
        }
        return lengths;
    }

    private KnownLens known() {
        Print print = print();
        List<CardPicture> pictures = new ArrayList<>();
        for (RenderedCamera.Stand stand : RenderedCamera.allOver(5)) {
            byte[] file = camera.jpeg(camera.scene(Card.BODY, stand), seed);
            pictures.add(measured(file, print, any -> Optional.empty())
                    .findCardPicture()
                    .orElseThrow());
        }
        if (CameraCalibration.of(pictures) instanceof LensCalibrationAnswer.Calibrated lens) {
            return KnownLens.of(1, pictures.get(0).camera(), lens);
        }
        throw new AssertionError("seed " + seed + ": " + CameraCalibration.of(pictures));
    }

    private MeasuredPhoto measured(byte[] file, Print print, Function<CameraKey, Optional<KnownLens>> lenses) {
        PhotoAnswer answer = PhotoMeasuring.of(
                new PictureFile("photo.jpg", file),
                new PhotoRequest(Optional.empty(), any -> print, lenses),
                Progress.SILENT);
        if (answer instanceof MeasuredPhoto photo) {
            return photo;
        }
        throw new AssertionError("seed " + seed + ": " + answer);
    }

    private List<Length> later(Kind kind, KnownLens known) {
        Scene scene = camera.scene(
                kind.card,
                new RenderedCamera.Stand(
                        between(-40, 40),
                        between(-20, 20),
                        between(400, 460),
                        between(kind.leastTilt_deg, kind.mostTilt_deg),
                        between(0, 360),
                        90 + between(-20, 20)));
        byte[] file = camera.jpeg(scene, seed + 7);
        Print print = print();
        MeasuredPhoto noted = measured(file, print, any -> Optional.empty());
        MeasuredPhoto calibrated = measured(file, print, any -> Optional.of(known));
        if (calibrated.lensSource() != LensSource.CALIBRATED) {
            System.out.println("seed " + seed + ", " + kind + ": the calibration was left out");
        }
        List<Length> lengths = new ArrayList<>();
        while (lengths.size() < LENGTHS) {
            Point from = place(kind);
            Point to = place(kind);
            if (from.distanceTo_mm(to) >= 20 && inside(scene, from) && inside(scene, to)) {
                lengths.add(length(kind, scene, List.of(noted, calibrated), from, to));
            }
        }
        return lengths;
    }

    private Point place(Kind kind) {
        return Point.of(
                between(-kind.beside_mm, kind.card.width_mm() + kind.beside_mm),
                between(-kind.beside_mm, kind.card.height_mm() + kind.beside_mm));
    }

    private static boolean inside(Scene scene, Point place) {
        Pixel pixel = scene.view().pixel(place, 0);
        return pixel.x() > 5 && pixel.y() > 5 && pixel.x() < scene.width_px() - 5 && pixel.y() < scene.height_px() - 5;
    }

    private Length length(Kind kind, Scene scene, List<MeasuredPhoto> both, Point from, Point to) {
        double paper_mm = off(PAPER_MM);
        List<Pixel> exact = List.of(scene.view().pixel(from, 0), scene.view().pixel(to, 0));
        List<Pixel> byHand = List.of(
                missed(scene.view().pixel(from, paper_mm)), missed(scene.view().pixel(to, paper_mm)));
        List<Read> reads = both.stream()
                .map(photo -> read(photo, exact, byHand, from.distanceTo_mm(to)))
                .toList();
        return new Length(kind, reads.get(0), reads.get(1));
    }

    private static Read read(MeasuredPhoto photo, List<Pixel> exact, List<Pixel> byHand, double true_mm) {
        MarkAnswer.Line whole = line(photo, byHand);
        return new Read(
                line(photo, exact).length_mm() - true_mm,
                whole.length_mm() - true_mm,
                whole.terms_mm().plusMinus());
    }

    private static MarkAnswer.Line line(MeasuredPhoto photo, List<Pixel> ends) {
        return (MarkAnswer.Line) photo.measure(new Mark("length", MarkKind.LINE, ends, Height.IN_PLANE));
    }

    private Pixel missed(Pixel pixel) {
        return new Pixel(pixel.x() + off(HAND_PX), pixel.y() + off(HAND_PX));
    }

    static double coverage_pct(List<Length> lengths, Function<Length, Read> way) {
        return 100.0 * lengths.stream().map(way).filter(Read::covered).count() / lengths.size();
    }

    /** Of the values in order the one at this share. */
    static double quantile(List<Length> lengths, double share, ToDoubleFunction<Length> value) {
        double[] sorted = lengths.stream().mapToDouble(value).sorted().toArray();
        return sorted[(int) Math.round(share * (sorted.length - 1))];
    }

    static String summary(List<Length> lengths, Function<Length, Read> way) {
        return String.format(
                Locale.ROOT,
                "%d lengths: method 50 %% %.3f, 95 %% %.3f, largest %.3f mm; with hand and paper 50 %% %.3f, 95 %% %.3f mm;"
                        + " median ± %.3f, 95 %% ± %.3f mm; covered %.1f %%",
                lengths.size(),
                quantile(lengths, 0.5, one -> Math.abs(way.apply(one).method_mm())),
                quantile(lengths, 0.95, one -> Math.abs(way.apply(one).method_mm())),
                quantile(lengths, 1, one -> Math.abs(way.apply(one).method_mm())),
                quantile(lengths, 0.5, one -> Math.abs(way.apply(one).whole_mm())),
                quantile(lengths, 0.95, one -> Math.abs(way.apply(one).whole_mm())),
                quantile(lengths, 0.5, one -> way.apply(one).plusMinus_mm()),
                quantile(lengths, 0.95, one -> way.apply(one).plusMinus_mm()),
                coverage_pct(lengths, way));
    }

    /** So many cameras as the argument says, 60 otherwise; four pictures of each. */
    public static void main(String[] arguments) {
        long cameras = arguments.length > 0 ? Long.parseLong(arguments[0]) : 60;
        List<Length> all = new ArrayList<>();
        for (long seed = 0; seed < cameras; seed++) {
            try {
                all.addAll(camera(seed));
            } catch (AssertionError notMeasured) {
                System.out.println(notMeasured.getMessage());
            }
        }
        for (Kind kind : Kind.values()) {
            List<Length> some = all.stream().filter(one -> one.kind() == kind).toList();
            System.out.println(kind + " noted: " + summary(some, Length::noted));
            System.out.println(kind + " calibrated: " + summary(some, Length::calibrated));
        }
    }
}

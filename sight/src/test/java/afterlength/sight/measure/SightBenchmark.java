package afterlength.sight.measure;

import afterlength.craft.geometry.Point;
import afterlength.sight.card.Boards;
import afterlength.sight.card.Card;
import afterlength.sight.picture.Picture;
import afterlength.sight.picture.PictureFile;
import afterlength.sight.picture.PictureReader;
import afterlength.sight.rendered.Jpeg;
import afterlength.sight.rendered.Renderer;
import afterlength.sight.rendered.Scene;
import boofcv.abst.fiducial.calib.ConfigECoCheckDetector;
import boofcv.alg.fiducial.calib.ecocheck.ECoCheckDetector;
import boofcv.factory.fiducial.FactoryFiducial;
import boofcv.struct.image.GrayU8;
import java.awt.image.BufferedImage;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.Arrays;
import java.util.Locale;

/**
 * How long a picture of 12 million pixels takes: reading, detection and fit through our door, the rectified picture, and the
 * same detection by the library alone on a grey picture that is there already. Not a test: times depend on the machine. Give
 * the memory with -Xmx; the peak printed is that of the heap.
 */
final class SightBenchmark {
    private static final int ROUNDS = 9;

    private SightBenchmark() {}

    /** Prints medians of nine rounds after three to warm up. */
    public static void main(String[] arguments) {
        Scene scene = Scene.of(Card.BODY, 4032, Scene.Camera.over(Card.BODY, 25, 40, 430));
        byte[] file = Jpeg.noted(Renderer.jpeg(scene, 1), 1, 26, 4032, 3024);
        double read = median(() -> PictureReader.read(new PictureFile("photo.jpg", file)));
        BufferedImage upright = ((Picture) PictureReader.read(new PictureFile("photo.jpg", file))).upright();
        GrayU8 grey = grey(upright);
        double library = median(() -> detector().process(grey));
        resetPeak();
        double all = median(() -> Taken.measured(file, "body"));
        long peak = peak_bytes();
        MeasuredPhoto photo = Taken.measured(file, "body");
        double rectified = median(() ->
                RectifiedPicture.of(upright, photo.fitted().view(), 0, Point.of(-70, -60), Point.of(200, 300), 8));
        System.out.printf(
                Locale.ROOT,
                "read %.0f ms, library's detection alone %.0f ms, read + detect + fit %.0f ms (detect + fit / library %.2f),"
                        + " rectify 2160 x 2880 %.0f ms, peak heap %.0f MB%n",
                read,
                library,
                all,
                (all - read) / library,
                rectified,
                peak / 1e6);
    }

    private static ECoCheckDetector<GrayU8> detector() {
        return FactoryFiducial.ecocheck(new ConfigECoCheckDetector(), Boards.markers(), GrayU8.class)
                .getDetector();
    }

    private static GrayU8 grey(BufferedImage picture) {
        GrayU8 grey = new GrayU8(picture.getWidth(), picture.getHeight());
        for (int y = 0; y < grey.height; y++) {
            for (int x = 0; x < grey.width; x++) {
                grey.set(x, y, picture.getRGB(x, y) & 0xFF);
            }
        }
        return grey;
    }

    private static double median(Runnable work) {
        double[] times_ms = new double[ROUNDS];
        for (int round = -3; round < ROUNDS; round++) {
            long before = System.nanoTime();
            work.run();
            if (round >= 0) {
                times_ms[round] = (System.nanoTime() - before) / 1e6;
            }
        }
        Arrays.sort(times_ms);
        return times_ms[ROUNDS / 2];
    }

    private static void resetPeak() {
        System.gc();
        ManagementFactory.getMemoryPoolMXBeans().forEach(MemoryPoolMXBean::resetPeakUsage);
    }

    private static long peak_bytes() {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .mapToLong(pool -> pool.getPeakUsage().getUsed())
                .sum();
    }
}

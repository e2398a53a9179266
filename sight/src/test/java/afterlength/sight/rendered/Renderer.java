package afterlength.sight.rendered;

import afterlength.craft.geometry.Point;
import afterlength.sight.camera.Pixel;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.SplittableRandom;

/**
 * Makes the photograph of a scene: light is summed over sixteen points of every pixel, blurred as light, shaded, then turned into
 * the file's brightness (sRGB curve) and made noisy. Within tiles of eight pixels the way from picture to card is taken as
 * even, which is true to two thousandths of a pixel.
 */
public final class Renderer {
    private static final int TILE = 8;
    private static final int SAMPLES = 4;

    private final Scene scene;
    private final PrintedCard print;
    private final float[] light;
    private int left = Integer.MAX_VALUE;
    private int top = Integer.MAX_VALUE;
    private int right = -1;
    private int bottom = -1;

    private Renderer(Scene scene) {
        this.scene = scene;
        this.print = new PrintedCard(scene.card(), scene.spread_mm());
        this.light = new float[scene.width_px() * scene.height_px()];
    }

    public static BufferedImage render(Scene scene, long seed) {
        Renderer renderer = new Renderer(scene);
        renderer.exposeAll();
        renderer.blur();
        return renderer.developed(seed);
    }

    /** The same as a JPEG file, without any camera's notes. */
    public static byte[] jpeg(Scene scene, long seed) {
        return Jpeg.of(render(scene, seed), scene.quality());
    }

    private void exposeAll() {
        java.util.Arrays.fill(light, (float) PrintedCard.bench());
        for (int y = 0; y < scene.height_px(); y += TILE) {
            for (int x = 0; x < scene.width_px(); x += TILE) {
                exposeTile(x, y);
            }
        }
    }

    private void exposeTile(int x, int y) {
        double[][] corner = {place(x, y), place(x + TILE, y), place(x, y + TILE), place(x + TILE, y + TILE)};
        double margin = 0.5;
        boolean touched = print.mayTouch(
                Math.min(Math.min(corner[0][0], corner[1][0]), Math.min(corner[2][0], corner[3][0])) - margin,
                Math.min(Math.min(corner[0][1], corner[1][1]), Math.min(corner[2][1], corner[3][1])) - margin,
                Math.max(Math.max(corner[0][0], corner[1][0]), Math.max(corner[2][0], corner[3][0])) + margin,
                Math.max(Math.max(corner[0][1], corner[1][1]), Math.max(corner[2][1], corner[3][1])) + margin);
        if (!touched) {
            return;
        }
        left = Math.min(left, x);
        top = Math.min(top, y);
        right = Math.max(right, x + TILE);
        bottom = Math.max(bottom, y + TILE);
        for (int row = 0; row < TILE && y + row < scene.height_px(); row++) {
            for (int column = 0; column < TILE && x + column < scene.width_px(); column++) {
                light[(y + row) * scene.width_px() + x + column] = (float) exposed(corner, column, row);
            }
        }
    }

    /** The place on the card as it was designed, not as it was printed. */
    private double[] place(double x, double y) {
        Point place = scene.view().place(new Pixel(x, y), 0);
        return new double[] {place.x_mm() / scene.across(), place.y_mm() / scene.along()};
    }

    private double exposed(double[][] corner, int column, int row) {
        double sum = 0;
        for (int n = 0; n < SAMPLES * SAMPLES; n++) {
            double u = (column + (n % SAMPLES + 0.5) / SAMPLES) / TILE;
            double v = (row + (Math.floorDiv(n, SAMPLES) + 0.5) / SAMPLES) / TILE;
            double x = mixed(corner, 0, u, v);
            double y = mixed(corner, 1, u, v);
            sum += print.light(x, y);
        }
        return sum / (SAMPLES * SAMPLES);
    }

    private static double mixed(double[][] corner, int axis, double u, double v) {
        double above = corner[0][axis] * (1 - u) + corner[1][axis] * u;
        double below = corner[2][axis] * (1 - u) + corner[3][axis] * u;
        return above * (1 - v) + below * v;
    }

    /** Only where the card is; the bench is even. */
    private void blur() {
        if (scene.blur_px() <= 0 || right < 0) {
            return;
        }
        int reach = (int) Math.ceil(4 * scene.blur_px());
        left = Math.max(0, left - reach);
        top = Math.max(0, top - reach);
        right = Math.min(scene.width_px(), right + reach);
        bottom = Math.min(scene.height_px(), bottom + reach);
        float[] bell = bell(reach);
        for (int y = top; y < bottom; y++) {
            blurLine(y * scene.width_px() + left, 1, right - left, bell);
        }
        for (int x = left; x < right; x++) {
            blurLine(top * scene.width_px() + x, scene.width_px(), bottom - top, bell);
        }
    }

    private float[] bell(int reach) {
        float[] bell = new float[2 * reach + 1];
        double sum = 0;
        for (int n = -reach; n <= reach; n++) {
            bell[n + reach] = (float) Math.exp(-n * n / (2 * scene.blur_px() * scene.blur_px()));
            sum += bell[n + reach];
        }
        for (int n = 0; n < bell.length; n++) {
            bell[n] /= (float) sum;
        }
        return bell;
    }

    private void blurLine(int from, int step, int count, float[] bell) {
        int reach = bell.length / 2;
        float[] line = new float[count + 2 * reach];
        for (int n = 0; n < line.length; n++) {
            line[n] = light[from + step * Math.max(0, Math.min(count - 1, n - reach))];
        }
        for (int n = 0; n < count; n++) {
            float sum = 0;
            for (int m = 0; m < bell.length; m++) {
                sum += bell[m] * line[n + m];
            }
            light[from + step * n] = sum;
        }
    }

    private BufferedImage developed(long seed) {
        int width = scene.width_px();
        int height = scene.height_px();
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
        byte[] bytes = ((DataBufferByte) picture.getRaster().getDataBuffer()).getData();
        SplittableRandom random = new SplittableRandom(seed);
        float[] noise = grain(random);
        for (int y = 0; y < height; y++) {
            int from = random.nextInt(noise.length - width);
            for (int x = 0; x < width; x++) {
                double shown = shown(light[y * width + x] * lit(x, y)) + noise[from + x] * scene.noise();
                byte value = (byte) Math.max(0, Math.min(255, Math.round(shown)));
                int at = 3 * (y * width + x);
                bytes[at] = value;
                bytes[at + 1] = value;
                bytes[at + 2] = value;
            }
        }
        return picture;
    }

    private float[] grain(SplittableRandom random) {
        float[] noise = new float[4 * scene.width_px()];
        for (int n = 0; n < noise.length; n++) {
            noise[n] = (float) random.nextGaussian();
        }
        return noise;
    }

    /** A lamp that falls off to one side, and a shadow with a soft edge across the middle. */
    private double lit(int x, int y) {
        double across = (double) x / scene.width_px();
        double slanted = (across + 0.4 * y / scene.height_px() - 0.6) / 0.1;
        double inShadow = 1 / (1 + Math.exp(-slanted));
        return (1 - 0.15 * across) * (1 - scene.shadow() * inShadow);
    }

    /** The sRGB curve (IEC 61966-2-1), in steps of 256. */
    private static double shown(double light) {
        return 255 * (light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055);
    }
}

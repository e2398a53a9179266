package afterlength.start.demo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.util.SplittableRandom;

/** What is done to every picture last: the grain of a sensor, and the strip that says what the picture is. */
final class Finish {
    static final String WORDS = "drawn for the demonstration, not a photograph";
    private static final int STRIP = 52;

    private Finish() {}

    static void paint(Canvas canvas, long seed) {
        addGrain(canvas.pixels(), new SplittableRandom(seed));
        int top = canvas.frame().height() - STRIP;
        Graphics2D pen = canvas.graphics();
        pen.setColor(new Color(244, 238, 224));
        pen.fillRect(0, top, canvas.frame().width(), STRIP);
        pen.setColor(new Color(58, 44, 32));
        PenLettering.write(pen, WORDS, 26, top + 35, 20);
    }

    /** One step of brightness up or down at most; one random number serves sixteen pixels. */
    private static void addGrain(int[] pixels, SplittableRandom random) {
        int chances = 0;
        for (int i = 0; i < pixels.length; i++) {
            chances = i % 16 == 0 ? random.nextInt() : chances >>> 2;
            pixels[i] = shifted(pixels[i], chances & 3);
        }
    }

    private static int shifted(int pixel, int chance) {
        int step = chance == 0 ? -1 : chance == 3 ? 1 : 0;
        return Rgb.of(kept(Rgb.red(pixel) + step), kept(Rgb.green(pixel) + step), kept(Rgb.blue(pixel) + step));
    }

    private static int kept(int value) {
        return Math.min(Math.max(value, 0), 255);
    }
}

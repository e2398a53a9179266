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
        PenLettering.write(pen, WORDS, 26, top + 35, 21.5);
    }

    /** One step of brightness up or down at most, in runs of 32 chances from one number. */
    private static void addGrain(int[] pixels, SplittableRandom random) {
        for (int i = 0; i < pixels.length; i++) {
            int chance = i % 16 == 0 ? random.nextInt() : 0;
            pixels[i] = shifted(pixels[i], chance >>> (i % 16 * 2) & 3);
        }
    }

    private static int shifted(int pixel, int chance) {
        int step = chance == 0 ? -1 : chance == 3 ? 1 : 0;
        return kept((pixel >> 16 & 0xff) + step) << 16
                | kept((pixel >> 8 & 0xff) + step) << 8
                | kept((pixel & 0xff) + step);
    }

    private static int kept(int value) {
        return Math.min(Math.max(value, 0), 255);
    }
}

package afterlength.start.demo;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Paints the pictures of the demonstration: the same picture from the same program, every time. About a third of a second each.
 */
public final class DemoPictures {
    /** The lower eye and wing of the treble sound-hole. */
    private static final Frame CRACK = Frame.close(62, 268, 112, -6);
    /** The upper treble bout. */
    private static final Frame EDGE = Frame.close(70, 66, 112, 5);

    private DemoPictures() {}

    /** Writes one picture as a JPEG file. */
    public static void draw(DemoPicture which, Path target) throws IOException {
        Files.write(target, jpeg(which));
    }

    /** One picture as the bytes of a JPEG file. */
    public static byte[] jpeg(DemoPicture which) throws IOException {
        return JpegFile.bytes(painted(which));
    }

    static BufferedImage painted(DemoPicture which) {
        Canvas canvas = scene(which);
        Finish.paint(canvas, which.name().hashCode());
        return canvas.image();
    }

    private static Canvas scene(DemoPicture which) {
        return switch (which) {
            case VIOLA_FRONT -> front(DemoInstrument.viola(false));
            case VIOLA_FRONT_AFTER -> front(DemoInstrument.viola(true));
            case VIOLA_BACK -> back(DemoInstrument.viola(false));
            case VIOLA_SCROLL -> scroll(DemoInstrument.viola(false));
            case VIOLA_CRACK -> part(DemoInstrument.viola(false), CRACK);
            case VIOLA_CRACK_AFTER -> part(DemoInstrument.viola(true), CRACK);
            case VIOLA_EDGE -> part(DemoInstrument.viola(false), EDGE);
            case VIOLA_SEAM -> SeamScene.painted(DemoInstrument.viola(false));
            case VIOLA_SEAM_AFTER -> SeamScene.painted(DemoInstrument.viola(true));
            case VIOLA_BRIDGE -> BridgeScene.painted(DemoInstrument.viola(false));
            case VIOLA_BRIDGE_AFTER -> BridgeScene.painted(DemoInstrument.viola(true));
            case VIOLA_LABEL -> LabelScene.painted(DemoInstrument.viola(false));
            case SMALL_VIOLIN_FRONT -> front(DemoInstrument.smallViolin());
            case RED_VIOLIN_FRONT -> front(DemoInstrument.redViolin());
            case CELLO_FRONT -> front(DemoInstrument.cello());
            case PALE_VIOLIN_FRONT -> front(DemoInstrument.paleViolin());
            case DARK_VIOLIN_FRONT -> front(DemoInstrument.darkViolin());
        };
    }

    private static Canvas front(DemoInstrument instrument) {
        return part(instrument, FrontScene.whole(instrument));
    }

    private static Canvas part(DemoInstrument instrument, Frame frame) {
        Canvas canvas = new Canvas(frame);
        new FrontScene(canvas, instrument).paint();
        return canvas;
    }

    private static Canvas back(DemoInstrument instrument) {
        Canvas canvas = new Canvas(FrontScene.whole(instrument));
        new BackScene(canvas, instrument).paint();
        return canvas;
    }

    private static Canvas scroll(DemoInstrument instrument) {
        Canvas canvas = new Canvas(ScrollScene.frame(instrument));
        new ScrollScene(canvas, instrument).paint();
        return canvas;
    }
}

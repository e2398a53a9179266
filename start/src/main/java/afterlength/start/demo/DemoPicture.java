package afterlength.start.demo;

import java.util.Locale;

/**
 * The pictures of the demonstration shop. The main case is a viola of about 1905, unplayed since 1974; the others stand on the
 * shelf beside it.
 */
public enum DemoPicture {
    VIOLA_FRONT("Front, as received", DemoView.FRONT),
    VIOLA_BACK("Back, as received", DemoView.BACK),
    VIOLA_SCROLL("Scroll, bass side", DemoView.CLOSE),
    VIOLA_CRACK("Crack from the lower eye of the treble sound-hole, along the grain", DemoView.CLOSE),
    VIOLA_SEAM("Open seam at the lower treble bout", DemoView.CLOSE),
    VIOLA_EDGE("Worn edge at the upper treble bout", DemoView.CLOSE),
    VIOLA_BRIDGE("Old bridge from the tailpiece side, too low", DemoView.CLOSE),
    VIOLA_LABEL("Label inside, no longer readable", DemoView.CLOSE),
    VIOLA_CRACK_AFTER("The crack after gluing and retouching; its line can still be found", DemoView.CLOSE),
    VIOLA_SEAM_AFTER("The lower treble bout after closing the seam", DemoView.CLOSE),
    VIOLA_BRIDGE_AFTER("The new bridge from the tailpiece side", DemoView.CLOSE),
    VIOLA_FRONT_AFTER("Front, ready for handover", DemoView.FRONT),
    SMALL_VIOLIN_FRONT("Three-quarter violin, front", DemoView.FRONT),
    RED_VIOLIN_FRONT("Violin with red varnish, front", DemoView.FRONT),
    CELLO_FRONT("Cello, front", DemoView.FRONT),
    PALE_VIOLIN_FRONT("Violin with pale varnish, front", DemoView.FRONT),
    DARK_VIOLIN_FRONT("Old dark violin, front", DemoView.FRONT);

    private final String caption;
    private final DemoView view;

    DemoPicture(String caption, DemoView view) {
        this.caption = caption;
        this.view = view;
    }

    /** What is to be seen, in a few words. */
    public String caption() {
        return caption;
    }

    public DemoView view() {
        return view;
    }

    /** A file name for the picture: {@code viola-front.jpg}. */
    public String fileName() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-') + ".jpg";
    }
}

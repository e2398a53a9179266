package afterlength.start.demo;

/** How a picture is taken, and its size in pixels. */
public enum DemoView {
    FRONT(1600, 2000),
    BACK(1600, 2000),
    CLOSE(1600, 1200);

    private final int width;
    private final int height;

    DemoView(int width, int height) {
        this.width = width;
        this.height = height;
    }

    public int width() {
        return width;
    }

    public int height() {
        return height;
    }
}

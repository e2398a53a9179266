package afterlength.workshop.desk;

/** The line drawing on a title page. */
public final class TitleDrawing {
    private TitleDrawing() {}

    public static String svg() {
        return "";
    }
}

package afterlength.workshop.examination;

import afterlength.workshop.desk.InstrumentView;
import org.jspecify.annotations.Nullable;

/** What marks are drawn on: a photograph, or our own drawing of the instrument. */
sealed interface MarkGround permits PhotographGround, DrawingGround {
    long visitId();

    String title();

    /** What a person who does not see the picture is told. */
    String spoken();

    /** The page on which marks are drawn here. */
    String page();

    /** Where the picture itself is served. */
    String picture();

    double left();

    double top();

    double width();

    double height();

    /** What a coordinate counts. */
    String unit();

    /** Where the page leads back to. */
    String backTo();

    String backWords();

    @Nullable
    Photograph photograph();

    @Nullable
    InstrumentView view();

    default boolean isPhotograph() {
        return photograph() != null;
    }
}

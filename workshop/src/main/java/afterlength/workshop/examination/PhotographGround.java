package afterlength.workshop.examination;

import afterlength.workshop.desk.InstrumentView;
import org.jspecify.annotations.Nullable;

/** A photograph as ground for marks; coordinates are pixels of the upright picture. */
record PhotographGround(Photograph photograph) implements MarkGround {
    @Override
    public long visitId() {
        return photograph.visitId();
    }

    @Override
    public String title() {
        return photograph.title();
    }

    @Override
    public String spoken() {
        return photograph.spoken();
    }

    @Override
    public String page() {
        return "/photographs/" + photograph.id() + "/marks";
    }

    @Override
    public String picture() {
        return photograph.address();
    }

    @Override
    public double left() {
        return 0;
    }

    @Override
    public double top() {
        return 0;
    }

    @Override
    public double width() {
        return photograph.widthPx();
    }

    @Override
    public double height() {
        return photograph.heightPx();
    }

    @Override
    public String unit() {
        return "pixels";
    }

    @Override
    public String backTo() {
        return "/visits/" + visitId() + "/photographs";
    }

    @Override
    public String backWords() {
        return "Photographs";
    }

    @Override
    public @Nullable InstrumentView view() {
        return null;
    }
}

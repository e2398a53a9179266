package afterlength.workshop.examination;

import afterlength.sight.measure.MarkKind;

/** What a person marks on a picture; each is a line, an area or a point. */
public enum MarkTool {
    CRACK("crack line", MarkKind.LINE),
    SEAM("seam or edge", MarkKind.LINE),
    WORN("worn area", MarkKind.AREA),
    OUTLINE("outline", MarkKind.AREA),
    POINT("point", MarkKind.POINT);

    private final String words;
    private final MarkKind kind;

    MarkTool(String words, MarkKind kind) {
        this.words = words;
        this.kind = kind;
    }

    public String words() {
        return words;
    }

    public MarkKind kind() {
        return kind;
    }
}

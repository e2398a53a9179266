package afterlength.sight.measure;

/** What a mark is: a crack, a seam or an edge is a line; a worn place, a hole or a template is an area; a point is a point. */
public enum MarkKind {
    LINE("line", 2),
    AREA("area", 3),
    POINT("point", 1);

    private final String word;
    private final int fewest;

    MarkKind(String word, int fewest) {
        this.word = word;
        this.fewest = fewest;
    }

    public String word() {
        return word;
    }

    /** The fewest points it can have. */
    public int fewest() {
        return fewest;
    }
}

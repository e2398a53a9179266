package afterlength.craft.glue;

/**
 * On which gel a strength in grams was read. The two figures are not the same scale and no conversion was read, so a strength
 * always names its scale.
 */
public enum BloomScale {
    /** Glue test, gel of 12.5 %. Source: docs/sources.md#glue-bloom. */
    GLUE("glue test, 12.5 % gel"),
    /** Food gelatine test, gel of 6.67 %. Source: docs/sources.md#gelatine-gel. */
    GELATINE("gelatine test, 6.67 % gel");

    private final String words;

    BloomScale(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}

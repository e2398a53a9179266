package afterlength.craft.glue;

import java.util.Arrays;
import java.util.Optional;

/**
 * Common mixtures, parts of water by mass for one of dry glue. They were printed for glue of about 192 g; a table of ratio by
 * grade exists and was not read, so the field stays open. Source: docs/sources.md#glue-mixing.
 */
public enum Mixture {
    STRONG("strong", 1),
    GENERAL("general", 2),
    THIN("cracks and sizing", 3);

    private final String word;
    private final double waterForOne;

    Mixture(String word, double waterForOne) {
        this.word = word;
        this.waterForOne = waterForOne;
    }

    public String word() {
        return word;
    }

    public double waterForOne() {
        return waterForOne;
    }

    public static Optional<Mixture> find(String name) {
        return Arrays.stream(values()).filter(one -> one.name().equals(name)).findFirst();
    }
}

package afterlength.craft.wood;

/** From the least to the most that is to be expected, both in the unit the name of the component ends with. */
public record Band(double low, double high) {
    public Band {
        if (!(low <= high)) {
            throw new IllegalArgumentException("band from " + low + " to " + high + " does not rise");
        }
    }
}

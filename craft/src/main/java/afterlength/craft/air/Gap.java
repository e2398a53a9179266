package afterlength.craft.air;

/** A time without readings, kept as a gap: nothing is made up in between. Moments in seconds since 1970. */
public record Gap(long from_s, long to_s) {
    public double hours() {
        return (to_s - from_s) / 3600.0;
    }
}

package afterlength.craft.access;

/** Looks on while a long search goes on. */
@FunctionalInterface
public interface Watch {
    /**
     * Told now and then.
     *
     * @param share of the work that is done, 0 to 1
     * @return false to stop the search
     */
    boolean goesOn(double share);
}

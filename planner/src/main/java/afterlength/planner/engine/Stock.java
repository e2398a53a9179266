package afterlength.planner.engine;

/** What is still free of the resources over time. */
interface Stock {
    void clear();

    /** The earliest minute from {@code least} on at which all that the activity uses is free; {@link Lane#NEVER} when it needs more than there is. */
    int earliest(int activity, int least);

    void take(int activity, int start);

    void give(int activity, int start);

    static Stock of(Network network) {
        return PackedStock.fits(network) ? new PackedStock(network) : new ProfileStock(network);
    }
}

package afterlength.craft.access;

/** Looks on while the planes of a search are laid out, and remembers that it was stopped. */
final class Laying {
    private final Watch watch;
    private boolean stopped;

    Laying(Watch watch) {
        this.watch = watch;
    }

    /** What share of the laying out is done, 0 to 1; false when no more is to be laid out. */
    boolean goesOn(double share) {
        stopped = stopped || !watch.goesOn(share);
        return !stopped;
    }

    boolean isStopped() {
        return stopped;
    }
}

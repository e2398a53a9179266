package afterlength.sight.measure;

/** Told how far the work on a picture has come, and asked whether it is still wanted. Called on the thread that works. */
public interface Progress {
    Progress SILENT = new Progress() {
        @Override
        public void at(Step step) {}

        @Override
        public boolean cancelled() {
            return false;
        }
    };

    /** The steps in their order; a 12 million pixel picture spends nearly all its time in the second. */
    enum Step {
        READING,
        FINDING,
        FITTING,
        DONE
    }

    void at(Step step);

    /** Asked between two steps. */
    boolean cancelled();
}

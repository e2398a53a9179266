package afterlength.craft.air;

/** Something to know about a file whose rows are all the same counted. */
public sealed interface LoggerNote {
    String text();

    /** The clock was set back. */
    record HourTwice(int firstLine) implements LoggerNote {
        @Override
        public String text() {
            return "From line " + firstLine
                    + " on, an hour comes twice because the clock was set back; the rows are read as its "
                    + "second pass.";
        }
    }

    /** Rows were not in the order of time. */
    record PutInOrder(int count) implements LoggerNote {
        @Override
        public String text() {
            return "The rows were not in the order of time (" + count + (count == 1 ? " step" : " steps")
                    + " back); they were put in order.";
        }
    }

    /** Too many faults of different kinds. */
    record NotLaidOutSo(int line) implements LoggerNote {
        @Override
        public String text() {
            return "Reading stopped at line " + line + ": faults alternate more than " + RejectedList.MOST_ENTRIES
                    + " times, so the file is not laid out as was said. Check the columns and the order of day and month.";
        }
    }
}

package afterlength.craft.air;

import java.util.List;

/**
 * What a logger file said.
 *
 * @param rows rows below the heading, blank ones left out
 * @param rejected every row that is not counted, in the order of the file
 * @param broken whether reading stopped because the file is not laid out as was said
 */
public record LoggerReading(
        AirRecord record, int rows, List<RejectedRows> rejected, List<LoggerNote> notes, boolean broken) {
    public LoggerReading {
        rejected = List.copyOf(rejected);
        notes = List.copyOf(notes);
    }

    public int rejectedCount() {
        return rejected.stream().mapToInt(RejectedRows::count).sum();
    }
}

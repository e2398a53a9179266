package afterlength.craft.air;

import java.time.LocalDateTime;

/** Reads a million rows made up on the fly and prints how many were read; to be run with little memory. */
final class MillionRows {
    static final int ROWS = 1_000_000;

    private MillionRows() {}

    public static void main(String[] arguments) {
        long start_ns = System.nanoTime();
        LoggerReader reader = new LoggerReader(Layouts.ISO);
        reader.line("time,temp,RH");
        LocalDateTime time = LocalDateTime.of(2024, 1, 1, 0, 0);
        for (int n = 0; n < ROWS; n++) {
            reader.line(time.plusMinutes(n).toString().replace('T', ' ') + ",2" + n % 10 + "." + n % 7 + ",4" + n % 10
                    + ".25");
        }
        LoggerReading reading = reader.finish();
        System.out.println(reading.record().size() + " " + reading.rejectedCount() + " "
                + (System.nanoTime() - start_ns) / 1_000_000 + " ms");
    }
}

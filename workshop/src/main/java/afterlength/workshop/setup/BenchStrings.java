package afterlength.workshop.setup;

import afterlength.craft.setup.StringSet;
import java.util.Map;

/** What the pitch of the strings follows from. */
final class BenchStrings {
    private BenchStrings() {}

    static double a4_Hz(Map<BenchReading, Double> readings) {
        return readings.getOrDefault(BenchReading.A4, StringSet.USUAL_A4_Hz);
    }
}

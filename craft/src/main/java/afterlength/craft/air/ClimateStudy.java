package afterlength.craft.air;

import afterlength.craft.wood.PlateResponse;
import afterlength.craft.wood.WoodCaveat;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What the record of a logger means: hours in each band of humidity, what the wood would settle at and what a plate came to, gaps,
 * and the steps of its moisture that matter. A reading stands for the time to the next one, in front of a gap for the usual
 * interval.
 *
 * @param hours in each band, every band named
 * @param longestAbove75_h the longest time above 75 % without a break
 */
public record ClimateStudy(
        PlateHistory history,
        Map<HumidityBand, Double> hours,
        double longestAbove75_h,
        Spread temperature_C,
        Spread humidity_pct,
        Spread equilibrium_pct,
        Spread plate_pct,
        int outsideCurve,
        List<MoistureStep> steps,
        List<WoodCaveat> caveats) {
    /** After so many time constants a twentieth of a wrong start is left. */
    private static final double FORGOTTEN = 3;

    /** Least, mean and most of the numbers there are; all NaN where there are none. */
    public record Spread(double least, double mean, double most) {}

    public static ClimateStudy of(AirRecord record, PlateResponse response) {
        if (record.size() == 0) {
            throw new IllegalArgumentException("a record without readings means nothing");
        }
        PlateHistory history = PlateHistory.of(record, response);
        double forgotten_h = FORGOTTEN * response.slow_h();
        return new ClimateStudy(
                history,
                hours(record),
                longestAbove75_h(record),
                spread(record.size(), record::temperature_C),
                spread(record.size(), record::humidity_pct),
                spread(record.size(), history::equilibrium_pct),
                spread(record.size(), history::plate_pct),
                outsideCurve(history),
                new StepSearch(history, forgotten_h).find(),
                caveats(forgotten_h));
    }

    private static List<WoodCaveat> caveats(double forgotten_h) {
        List<WoodCaveat> caveats = new ArrayList<>(WoodCaveat.OF_THE_CURVE);
        caveats.remove(new WoodCaveat.SlowToFollow());
        caveats.add(new WoodCaveat.ShortestTime());
        caveats.add(new WoodCaveat.StartUnknown(forgotten_h));
        return List.copyOf(caveats);
    }

    private static Map<HumidityBand, Double> hours(AirRecord record) {
        Map<HumidityBand, Double> hours = new EnumMap<>(HumidityBand.class);
        for (HumidityBand band : HumidityBand.values()) {
            hours.put(band, 0.0);
        }
        long usual_s = record.usualInterval_s();
        for (int n = 0; n < record.size(); n++) {
            hours.merge(HumidityBand.of(record.humidity_pct(n)), stands_s(record, n, usual_s) / 3600.0, Double::sum);
        }
        return hours;
    }

    private static double longestAbove75_h(AirRecord record) {
        long usual_s = record.usualInterval_s();
        double longest_s = 0;
        double running_s = 0;
        for (int n = 0; n < record.size(); n++) {
            boolean damp = HumidityBand.of(record.humidity_pct(n)) == HumidityBand.ABOVE_75;
            running_s = damp ? running_s + stands_s(record, n, usual_s) : 0;
            longest_s = Math.max(longest_s, running_s);
        }
        return longest_s / 3600;
    }

    private static long stands_s(AirRecord record, int n, long usual_s) {
        long next_s = n + 1 == record.size() ? usual_s : record.moment_s(n + 1) - record.moment_s(n);
        return next_s > PlateHistory.GAP_INTERVALS * usual_s ? usual_s : next_s;
    }

    private interface Numbers {
        double at(int n);
    }

    private static Spread spread(int size, Numbers numbers) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        double sum = 0;
        int count = 0;
        for (int n = 0; n < size; n++) {
            double value = numbers.at(n);
            if (!Double.isNaN(value)) {
                least = Math.min(least, value);
                most = Math.max(most, value);
                sum += value;
                count++;
            }
        }
        return count == 0 ? new Spread(Double.NaN, Double.NaN, Double.NaN) : new Spread(least, sum / count, most);
    }

    private static int outsideCurve(PlateHistory history) {
        int count = 0;
        for (int n = 0; n < history.record().size(); n++) {
            count += Double.isNaN(history.equilibrium_pct(n)) ? 1 : 0;
        }
        return count;
    }
}

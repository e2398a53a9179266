package afterlength.craft.air;

import afterlength.craft.units.RelativeHumidity;
import afterlength.craft.units.Temperature;
import afterlength.craft.wood.EquilibriumMoisture;
import afterlength.craft.wood.PlateFollower;
import afterlength.craft.wood.PlateResponse;
import java.util.ArrayList;
import java.util.List;

/**
 * For every reading of a record: the moisture wood would settle at, and the moisture of a plate that follows. Where the air lies
 * outside the curve both are NaN. After a gap, and after such air, the plate starts anew, because nobody knows what it went
 * through; how far each reading lies behind a start is kept, for those who want to wait until the start is forgotten.
 */
public final class PlateHistory {
    /** A silence of more than this many usual intervals, and of an hour and more, is a gap. */
    static final double GAP_INTERVALS = 2.5;

    private static final long LEAST_GAP_S = 3600;

    private final AirRecord record;
    private final float[] equilibrium_pct;
    private final float[] plate_pct;
    private final float[] sinceStart_h;
    private final List<Gap> gaps = new ArrayList<>();

    private PlateHistory(AirRecord record) {
        this.record = record;
        equilibrium_pct = new float[record.size()];
        plate_pct = new float[record.size()];
        sinceStart_h = new float[record.size()];
    }

    public static PlateHistory of(AirRecord record, PlateResponse response) {
        PlateHistory history = new PlateHistory(record);
        history.run(
                new PlateFollower(response), Math.max(LEAST_GAP_S, (long) (GAP_INTERVALS * record.usualInterval_s())));
        return history;
    }

    private void run(PlateFollower plate, long longest_s) {
        boolean running = false;
        for (int n = 0; n < record.size(); n++) {
            long passed_s = n == 0 ? 0 : record.moment_s(n) - record.moment_s(n - 1);
            if (passed_s > longest_s) {
                gaps.add(new Gap(record.moment_s(n - 1), record.moment_s(n)));
                running = false;
            }
            equilibrium_pct[n] = (float) settled_pct(n);
            if (Float.isNaN(equilibrium_pct[n])) {
                plate_pct[n] = Float.NaN;
                running = false;
            } else if (running) {
                plate_pct[n] = (float) plate.follow(equilibrium_pct[n], passed_s / 3600.0);
                sinceStart_h[n] = sinceStart_h[n - 1] + passed_s / 3600f;
            } else {
                plate_pct[n] = (float) plate.start(equilibrium_pct[n]);
                running = true;
            }
        }
    }

    private double settled_pct(int n) {
        return EquilibriumMoisture.of(
                                Temperature.ofCelsius(record.temperature_C(n)),
                                RelativeHumidity.ofPct(record.humidity_pct(n)))
                        instanceof EquilibriumMoisture.Value value
                ? value.moisture().pct()
                : Double.NaN;
    }

    public AirRecord record() {
        return record;
    }

    public List<Gap> gaps() {
        return List.copyOf(gaps);
    }

    /** NaN where the air lies outside the curve. */
    public double equilibrium_pct(int n) {
        return equilibrium_pct[n];
    }

    public double plate_pct(int n) {
        return plate_pct[n];
    }

    public double sinceStart_h(int n) {
        return sinceStart_h[n];
    }
}

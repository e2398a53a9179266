package afterlength.workshop.setup;

import afterlength.craft.setup.BassTreble;
import afterlength.craft.setup.Board;
import afterlength.craft.setup.Waist;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The parts of a bridge that are built from readings which may be missing. What belongs together counts only when both are there. */
final class BenchReadings {
    private BenchReadings() {}

    static Board board(double length_mm, double radius_mm, Map<BenchReading, Double> readings) {
        @Nullable Double bass_mm = readings.get(BenchReading.SCOOP_BASS);
        @Nullable Double treble_mm = readings.get(BenchReading.SCOOP_TREBLE);
        @Nullable
        BassTreble scoop_mm = bass_mm == null || treble_mm == null ? null : new BassTreble(bass_mm, treble_mm);
        return new Board(length_mm, radius_mm, readings.get(BenchReading.BOARD_RADIUS_NUT), scoop_mm);
    }

    static @Nullable Waist waist(Map<BenchReading, Double> readings) {
        @Nullable Double width_mm = readings.get(BenchReading.WAIST_WIDTH);
        @Nullable Double drop_mm = readings.get(BenchReading.EDGE_DROP);
        return width_mm == null || drop_mm == null ? null : new Waist(width_mm, drop_mm);
    }
}

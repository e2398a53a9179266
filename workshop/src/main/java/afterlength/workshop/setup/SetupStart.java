package afterlength.workshop.setup;

import afterlength.workshop.desk.Basis;
import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.examination.MeasureStore;
import afterlength.workshop.examination.Moment;
import afterlength.workshop.examination.Quantity;
import afterlength.workshop.instrument.InstrumentKind;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.SettingsStore;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What the set-up page shows before anything is typed: what was saved for this visit; else what an earlier visit left and the
 * examination measured anew; else empty fields. Nothing is ever filled in from the name of a size.
 */
public final class SetupStart {
    static final List<Choice> CONVENTIONS =
            List.of(new Choice("square", "square to the board"), new Choice("upright", "upright"));

    /** Fields that a measure of the instrument as it came fills in; clearances over the board end are wished, not measured. */
    private static final Map<String, Quantity> FIELDS = Map.of(
            "speaking_length_mm", Quantity.SPEAKING_LENGTH,
            "board_length_mm", Quantity.BOARD_LENGTH,
            "board_radius_mm", Quantity.BOARD_RADIUS,
            "nut_spacing_mm", Quantity.NUT_SPACING,
            "bridge_spacing_mm", Quantity.BRIDGE_SPACING,
            "nut_clearance_mm/bass", Quantity.NUT_CLEARANCE_BASS,
            "nut_clearance_mm/treble", Quantity.NUT_CLEARANCE_TREBLE,
            "projection_mm", Quantity.PROJECTION);

    private final SetupStore setups;
    private final MeasureStore measures;
    private final InstrumentStore instruments;
    private final SettingsStore settings;

    public SetupStart(SetupStore setups, MeasureStore measures, InstrumentStore instruments, SettingsStore settings) {
        this.setups = setups;
        this.measures = measures;
        this.instruments = instruments;
        this.settings = settings;
    }

    Typed typed(Visit visit, SetupMoment moment) {
        Map<String, String> known = new HashMap<>(setups.findNow(visit.id(), moment)
                .or(() -> setups.findNow(visit.id(), SetupMoment.BEFORE))
                .map(setup -> SetupTyped.of(setup.bench()))
                .orElseGet(() -> fresh(visit)));
        known.put("hand", settings.get().usualHand());
        return Typed.known(Basis.with(known, stored(visit, moment)));
    }

    /** What is saved for this visit and moment, as it stands in the fields; nothing when none is. */
    Map<String, String> stored(Visit visit, SetupMoment moment) {
        return setups.findNow(visit.id(), moment)
                .map(setup -> SetupTyped.of(setup.bench()))
                .orElse(Map.of());
    }

    /** What an earlier visit left, and over it what was measured on this one. */
    private Map<String, String> fresh(Visit visit) {
        Map<String, String> known = new HashMap<>(setups.findEarlier(visit.instrumentId(), visit.id())
                .map(setup -> SetupTyped.of(setup.bench()))
                .orElseGet(() -> unknown(visit)));
        known.putAll(measured(visit));
        return known;
    }

    private Map<String, String> unknown(Visit visit) {
        Map<String, String> known = new HashMap<>();
        known.put("clearance_convention", "square");
        known.put("crown", CrownKind.RADIUS.name());
        known.put("spacing", SpacingKind.CENTRES.name());
        List<String> names = stringNames(instruments.get(visit.instrumentId()).kind());
        known.put("string_count", Integer.toString(names.size()));
        for (int n = 0; n < names.size(); n++) {
            known.put("strings/" + n + "/name", names.get(n));
        }
        return known;
    }

    private Map<String, String> measured(Visit visit) {
        Map<String, Quantity> all = new HashMap<>(FIELDS);
        for (BenchReading reading : BenchReading.values()) {
            reading.findMeasured().ifPresent(quantity -> all.put(reading.field(), quantity));
        }
        Map<String, String> known = new HashMap<>();
        all.forEach((field, quantity) -> measures.findNow(visit.id(), quantity, Moment.BEFORE)
                .ifPresent(measure -> known.put(field, Figures.typed(measure.value()))));
        BenchReading.TOGETHER.forEach(pair -> leaveOutHalf(pair, known));
        return known;
    }

    private static void leaveOutHalf(List<BenchReading> pair, Map<String, String> known) {
        if (!pair.stream().allMatch(reading -> known.containsKey(reading.field()))) {
            pair.forEach(reading -> known.remove(reading.field()));
        }
    }

    /** Tuned in fifths, the bass in fourths, as nearly all are today; the names are typed over where one is not. */
    private static List<String> stringNames(InstrumentKind kind) {
        return switch (kind) {
            case VIOLIN -> List.of("G", "D", "A", "E");
            case VIOLA, CELLO -> List.of("C", "G", "D", "A");
            case DOUBLE_BASS -> List.of("E", "A", "D", "G");
            case OTHER -> List.of("", "", "", "");
        };
    }
}

package afterlength.workshop.glue;

import afterlength.craft.glue.PotTimes;
import afterlength.workshop.climate.ClimateStore;
import afterlength.workshop.climate.LoggedAir;
import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Typed;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads a gluing; air that was not typed is asked of the logger. */
final class GluingForm {
    private GluingForm() {}

    static Typed usual() {
        return Typed.known(Map.of("clamp_h", Integer.toString(PotTimes.CLAMP.usual_min() / 60)));
    }

    static Optional<Gluing> read(
            Typed typed, Pot pot, List<Choice> visits, ClimateStore climate, String hand, Instant now) {
        String joint = typed.required("joint", "The joint", 120);
        Double used_g = typed.decimal("used_g", "The glue used", "g", 0.1, 5000);
        Double part_C = typed.decimal("part_C", "The temperature of the parts", "°C", -5, 60);
        Double clamp_h = typed.decimal("clamp_h", "The time in clamps", "h", 0.5, 240);
        Double air_C = typed.decimal("temperature_C", "The temperature of the air", "°C", -20, 60);
        Double air_pct = typed.decimal("humidity_pct", "The humidity of the air", "%", 0, 100);
        String remark = typed.text("remark", "The remark", 500);
        Long visitId = visit(typed, visits);
        if (!typed.sound()) {
            return Optional.empty();
        }
        Optional<LoggedAir> logged = air_C == null && air_pct == null ? climate.findNear(now) : Optional.empty();
        return Optional.of(new Gluing(
                0,
                null,
                false,
                pot.batch().id(),
                visitId,
                joint,
                used_g,
                part_C,
                logged.map(LoggedAir::temperature_C).orElse(air_C),
                logged.map(LoggedAir::humidity_pct).orElse(air_pct),
                source(logged, air_C, air_pct),
                clamp_h,
                remark,
                hand,
                now,
                now));
    }

    private static @Nullable Long visit(Typed typed, List<Choice> visits) {
        String id = typed.raw("visit_id");
        if (id.isEmpty()) {
            return null;
        }
        if (visits.stream().noneMatch(visit -> visit.value().equals(id))) {
            typed.note("visit_id", "The instrument is not in the house any more. Choose one that is, or none.");
            return null;
        }
        return Long.valueOf(id);
    }

    private static AirFrom source(Optional<LoggedAir> logged, @Nullable Double air_C, @Nullable Double air_pct) {
        if (logged.isPresent()) {
            return AirFrom.LOGGER;
        }
        return air_C == null && air_pct == null ? AirFrom.NONE : AirFrom.TYPED;
    }
}

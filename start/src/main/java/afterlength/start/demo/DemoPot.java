package afterlength.start.demo;

import afterlength.craft.glue.Batch;
import afterlength.craft.glue.BloomScale;
import afterlength.craft.glue.PotTimes;
import afterlength.workshop.climate.LoggedAir;
import afterlength.workshop.glue.AirFrom;
import afterlength.workshop.glue.GlueBatch;
import afterlength.workshop.glue.GlueStore;
import afterlength.workshop.glue.Gluing;
import afterlength.workshop.glue.Pot;
import afterlength.workshop.glue.PotEvent;
import afterlength.workshop.glue.PotStage;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The glue pot of the demonstration: a batch that became hot two hours ago, and a joint glued with it an hour ago. */
final class DemoPot {
    private DemoPot() {}

    static void warm(DemoStores stores, Instant today, String hand) {
        GlueStore glue = stores.glue();
        Batch mixed = Batch.of(60, 1.8, Batch.USUAL_MOISTURE_PCT);
        Instant made = today.minus(Duration.ofHours(5));
        Pot pot = glue.make(
                new GlueBatch(
                        0,
                        "hot hide glue",
                        192.0,
                        BloomScale.GLUE,
                        false,
                        mixed.dry_g(),
                        mixed.water_g(),
                        Batch.USUAL_MOISTURE_PCT,
                        "",
                        hand,
                        made),
                event(0, PotStage.SOAKING, null, made, PotTimes.SOAK_GROUND, hand));
        long id = pot.batch().id();
        glue.add(event(id, PotStage.WARMING, null, today.minus(Duration.ofMinutes(160)), PotTimes.WARM, hand));
        glue.add(event(id, PotStage.HOT, 59.5, today.minus(Duration.ofHours(2)), PotTimes.USE_HOT, hand));
        glue.add(joint(stores, id, today.minus(Duration.ofHours(1)), hand));
    }

    private static PotEvent event(
            long batchId, PotStage what, @Nullable Double pot_C, Instant at, PotTimes times, String hand) {
        return new PotEvent(0, batchId, what, pot_C, at.plus(Duration.ofMinutes(times.usual_min())), hand, at);
    }

    private static Gluing joint(DemoStores stores, long batchId, Instant at, String hand) {
        Optional<LoggedAir> air = stores.climate().findNear(at);
        return new Gluing(
                0,
                null,
                false,
                batchId,
                null,
                "test strips of spruce, to feel the time it leaves",
                6.0,
                24.0,
                air.map(LoggedAir::temperature_C).orElse(null),
                air.map(LoggedAir::humidity_pct).orElse(null),
                air.isPresent() ? AirFrom.LOGGER : AirFrom.NONE,
                12.0,
                "",
                hand,
                at,
                at);
    }
}

package afterlength.workshop.glue;

import afterlength.craft.glue.Batch;
import afterlength.craft.glue.BloomScale;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A batch as it was made up.
 *
 * @param strengthG gram strength, or null when the bag does not say
 * @param moisturePct water in the dry glue
 */
public record GlueBatch(
        long id,
        String name,
        @Nullable Double strengthG,
        BloomScale bloomScale,
        boolean flakes,
        double dryG,
        double waterG,
        double moisturePct,
        String remark,
        String hand,
        Instant madeAt) {

    double waterForOne() {
        return waterG / dryG;
    }

    double trueSolids_pct() {
        return Batch.of(dryG + waterG, waterForOne(), moisturePct).trueSolids_pct();
    }
}

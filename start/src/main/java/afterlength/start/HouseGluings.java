package afterlength.start;

import afterlength.workshop.desk.Figures;
import afterlength.workshop.glue.GlueBatch;
import afterlength.workshop.glue.GlueStore;
import afterlength.workshop.glue.Gluing;
import afterlength.workshop.handover.GluedJoint;
import afterlength.workshop.handover.GluedJoints;
import java.util.List;

/** Tells the handover what the glue pot knows of a visit. */
final class HouseGluings implements GluedJoints {
    private final GlueStore glue;

    HouseGluings(GlueStore glue) {
        this.glue = glue;
    }

    @Override
    public List<GluedJoint> of(long visitId) {
        return glue.listOf(visitId).stream().map(this::joint).toList();
    }

    private GluedJoint joint(Gluing gluing) {
        Double clamped_h = gluing.clampH();
        return new GluedJoint(
                gluing.at(),
                gluing.joint(),
                batch(glue.get(gluing.batchId()).batch()),
                air(gluing),
                clamped_h == null ? "" : "to stay clamped " + Figures.plain(clamped_h) + " h",
                gluing.remark(),
                gluing.hand());
    }

    private static String batch(GlueBatch batch) {
        Double strength_g = batch.strengthG();
        return batch.name() + (strength_g == null ? "" : ", " + Figures.plain(strength_g) + " g strength");
    }

    private static String air(Gluing gluing) {
        Double air_C = gluing.temperatureC();
        Double air_pct = gluing.humidityPct();
        String warmth = air_C == null ? "" : Figures.plain(air_C) + " °C";
        String damp = air_pct == null ? "" : Figures.plain(air_pct) + " % RH";
        String both = warmth.isEmpty() || damp.isEmpty() ? warmth + damp : warmth + ", " + damp;
        return both.isEmpty() ? "" : both + ", " + gluing.airFrom().words();
    }
}

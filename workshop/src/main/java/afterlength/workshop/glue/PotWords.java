package afterlength.workshop.glue;

import afterlength.craft.glue.BloomScale;
import afterlength.craft.glue.GlueGrade;
import afterlength.craft.glue.PotHeat;
import afterlength.craft.glue.PotTimes;
import afterlength.craft.units.Temperature;
import afterlength.workshop.desk.Cautions;
import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Figures;
import java.time.Instant;

/** How the glue pot is told. */
final class PotWords {
    private PotWords() {}

    static String answer(Pot pot, Instant now) {
        Instant due = pot.due();
        String left = ", " + Figures.fixed(pot.left_g(), 0) + " g left";
        if (due == null) {
            return pot.batch().name() + " is finished.";
        }
        boolean over = !due.isAfter(now);
        return switch (pot.stage()) {
            case SOAKING -> over ? "Soaked: warm it now." : "It soaks until " + Days.near(due, now) + ".";
            case WARMING ->
                over
                        ? "It should be warm: stir, and read its temperature."
                        : "It warms until " + Days.near(due, now) + ".";
            case HOT ->
                over
                        ? "Its working day is over: throw it away and make fresh."
                        : "Hot since " + Days.near(since(pot), now) + "; use it by " + Days.near(due, now) + left + ".";
            case COLD ->
                over
                        ? "It has stood long enough: smell it, or make fresh."
                        : "Sealed and cold until " + Days.near(due, now) + left + ".";
            case ENDED -> "It is finished.";
        };
    }

    static Instant since(Pot pot) {
        return pot.last().map(PotEvent::at).orElse(pot.batch().madeAt());
    }

    static String recipe(GlueBatch batch) {
        return Figures.fixed(batch.dryG(), 1) + " g dry glue in " + Figures.fixed(batch.waterG(), 1) + " g water (1 : "
                + Figures.plain(Math.rint(batch.waterForOne() * 100) / 100) + " by mass), "
                + Figures.fixed(batch.trueSolids_pct(), 1) + " % true solids at " + Figures.plain(batch.moisturePct())
                + " % moisture of the dry glue";
    }

    static String strength(GlueBatch batch) {
        if (batch.strengthG() == null) {
            return "gram strength not known";
        }
        String grade = GlueGrade.find(batch.strengthG(), batch.bloomScale())
                .map(found -> ", grade " + found.number() + " of 18")
                .orElse(batch.bloomScale() == BloomScale.GELATINE ? "; no glue grade on this scale" : "");
        return Figures.fixed(batch.strengthG(), 0) + " g by the "
                + batch.bloomScale().words() + grade;
    }

    static String care(Pot pot) {
        return pot.stage() == PotStage.WARMING || pot.stage() == PotStage.HOT ? Cautions.HOT_GLUE.text() : "";
    }

    /** What is said to the temperature that was read in the pot; empty when it is as it should be. */
    static String heat(Pot pot) {
        Double pot_C = pot.last().map(PotEvent::potC).orElse(null);
        if (pot_C == null) {
            return "";
        }
        return switch (PotHeat.of(Temperature.ofCelsius(pot_C))) {
            case COOL ->
                "The pot was at " + Figures.plain(pot_C)
                        + " °C, colder than any source wants it; the glue may gel on the " + "brush.";
            case HOT ->
                "The pot was at " + Figures.plain(pot_C)
                        + " °C; above 63 °C glue loses strength the longer it stands. Let it " + "cool to about 60 °C.";
            case GOOD, TOO_HOT -> "";
        };
    }

    static String gluing(Gluing gluing) {
        StringBuilder words = new StringBuilder(gluing.joint());
        if (gluing.usedG() != null) {
            words.append(", ").append(Figures.plain(gluing.usedG())).append(" g");
        }
        if (gluing.partC() != null) {
            words.append(", parts at ").append(Figures.plain(gluing.partC())).append(" °C");
        }
        return words.append(", ").append(air(gluing)).toString();
    }

    static String air(Gluing gluing) {
        if (gluing.temperatureC() == null && gluing.humidityPct() == null) {
            return "air not known";
        }
        String t = gluing.temperatureC() == null ? "" : Figures.fixed(gluing.temperatureC(), 1) + " °C";
        String rh = gluing.humidityPct() == null ? "" : Figures.fixed(gluing.humidityPct(), 0) + " % RH";
        return "in air of " + t + (t.isEmpty() || rh.isEmpty() ? "" : ", ") + rh + " "
                + gluing.airFrom().words();
    }

    static String range(PotTimes times) {
        return minutes(times.least_min()) + " to " + minutes(times.most_min());
    }

    static String minutes(int minutes) {
        return minutes >= 2880 ? Figures.plain(minutes / 1440.0) + " days" : Figures.duration(minutes);
    }
}

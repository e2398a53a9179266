package afterlength.workshop.examination;

import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.Typed;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Reads a sitting from what was typed. */
final class SittingForm {
    /** Offered, never forced. */
    static final List<String> MEANS = List.of(
            "daylight",
            "raking light",
            "lamp and mirror inside",
            "ultraviolet",
            "loupe",
            "touch",
            "tapping round the edge",
            "feeler gauge",
            "rule and calliper");

    private SittingForm() {}

    static Sitting read(Typed typed, long visitId, Instant now) {
        List<String> means = new ArrayList<>(
                MEANS.stream().filter(one -> typed.ticked("means", one)).toList());
        String own = typed.text("other_means", "Other light or tools", 200).replace('\n', ' ');
        if (!own.isEmpty()) {
            means.add(own);
        }
        if (means.isEmpty()) {
            typed.note("other_means", "No light and no tool is named. Tick at least one, or write your own.");
            means.add("?");
        }
        Air air = MeasureForm.air(typed);
        return new Sitting(
                0,
                visitId,
                null,
                false,
                String.join("\n", means),
                typed.text("remark", "The remark", 1000),
                air.temperature_C(),
                air.humidity_pct(),
                now,
                typed.required("hand", "The hand", 60),
                now);
    }

    static Typed fresh(Air air, String hand) {
        return Typed.known(Map.of(
                "temperature_c", Figures.typed(air.temperature_C()),
                "humidity_pct", Figures.typed(air.humidity_pct()),
                "hand", hand));
    }
}

package afterlength.workshop.agreement;

import afterlength.craft.units.Money;
import afterlength.workshop.desk.MoneyText;
import afterlength.workshop.desk.Typed;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Reads a line of a proposal from what was typed. */
final class TreatmentForm {
    /** A thousand hours: no line of a proposal is longer; a guard against slips. */
    private static final int LONGEST_MIN = 60_000;

    private TreatmentForm() {}

    /** The line as it was before, with what was typed; keeps its place and its template. */
    static Treatment read(Typed typed, Treatment before, int version) {
        Tier tier = typed.choice("tier", "How far it goes", Tier.class);
        Undoing undoing = typed.choice("undoing", "Whether it can be undone", Undoing.class);
        String title = typed.required("title", "The title", 160);
        int low = minutes(typed, "minutes_low", "The least minutes");
        int high = minutes(typed, "minutes_high", "The most minutes");
        if (high < low && typed.problem("minutes_high").isEmpty()) {
            typed.note(
                    "minutes_high",
                    "The most minutes, " + high + ", are fewer than the least, " + low + "; exchange or correct them.");
        }
        Money material = MoneyText.read(typed, "material", "The price of materials");
        return new Treatment(
                before.id(),
                before.visitId(),
                before.position(),
                tier == null ? before.tier() : tier,
                title.isBlank() ? "?" : title,
                typed.required("reason", "The reason", 1000),
                typed.required("if_left", "What happens if it is left", 1000),
                undoing == null ? before.undoing() : undoing,
                typed.required("reversibility", "How it can be taken back", 1000),
                typed.text("materials", "The materials", 400),
                before.template(),
                low,
                Math.max(low, high),
                material == null ? Money.NOTHING : material,
                before.putAway(),
                version);
    }

    static List<Long> findings(Typed typed, List<FindingLine> known) {
        return known.stream()
                .map(FindingLine::id)
                .filter(id -> typed.ticked("finding", Long.toString(id)))
                .toList();
    }

    private static int minutes(Typed typed, String name, String label) {
        Integer minutes = typed.whole(name, label, 0, LONGEST_MIN);
        if (minutes == null && typed.problem(name).isEmpty()) {
            typed.note(name, label + " are missing; write a whole number of minutes from 0 to " + LONGEST_MIN + ".");
        }
        return minutes == null ? 0 : minutes;
    }

    static Map<String, List<String>> typedOf(Treatment treatment, List<Long> findingIds) {
        Map<String, List<String>> typed = new HashMap<>();
        typed.put("tier", List.of(treatment.tier().name()));
        typed.put("title", List.of(treatment.title()));
        typed.put("reason", List.of(treatment.reason()));
        typed.put("if_left", List.of(treatment.ifLeft()));
        typed.put("undoing", List.of(treatment.undoing().name()));
        typed.put("reversibility", List.of(treatment.reversibility()));
        typed.put("materials", List.of(treatment.materials()));
        typed.put("minutes_low", List.of(Integer.toString(treatment.minutesLow())));
        typed.put("minutes_high", List.of(Integer.toString(treatment.minutesHigh())));
        typed.put(
                "material",
                treatment.materialMinor().equals(Money.NOTHING)
                        ? List.of()
                        : List.of(MoneyText.typed(treatment.materialMinor())));
        typed.put("version", List.of(Integer.toString(treatment.version())));
        typed.put("finding", findingIds.stream().map(id -> Long.toString(id)).toList());
        return typed;
    }
}

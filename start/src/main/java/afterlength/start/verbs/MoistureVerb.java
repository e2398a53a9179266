package afterlength.start.verbs;

import afterlength.craft.wood.EquilibriumMoisture;
import afterlength.craft.wood.WidthChange;
import afterlength.craft.wood.WoodCaveat;
import afterlength.start.document.AnswerDocument;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.DocumentValue;
import afterlength.start.document.Reply;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What moisture wood settles at in some air, and how much a plate moves when it comes from other air. */
final class MoistureVerb implements Verb {
    @Override
    public String name() {
        return "moisture";
    }

    @Override
    public String summary() {
        return "the moisture that wood settles at in some air, and how much wider or narrower a plate becomes";
    }

    @Override
    public String example() {
        return """
                {
                  "temperature_C": 20,
                  "relative_humidity_pct": 40,
                  "from": { "temperature_C": 20, "relative_humidity_pct": 60 },
                  "width_mm": 208,
                  "species": "Sitka spruce",
                  "cut": "quarter"
                }
                """;
    }

    @Override
    public String keys() {
        return """
                  temperature_C          of the air, -1.1 to 60 °C
                  relative_humidity_pct  of the air, 5 to 90 %
                  from                   optional: the air before, with the same two keys
                  width_mm               optional, with species and cut: width of the plate across the grain
                  species                Sitka spruce, Engelmann spruce, white spruce, red spruce, Norway spruce,
                                         bigleaf maple, sugar maple, black maple, red maple, silver maple,
                                         European sycamore, black willow, Pacific willow, African ebony
                  cut                    quarter (width along the radius of the log) or slab (along the rings)

                The answer holds emc_pct (moisture content) and emc_uncertainty_pct; with "from" also from_emc_pct,
                change_pct and, for a plate, width_change_mm: low for the smallest coefficient of the species, typical,
                and high for the largest. Negative is narrower.

                ./afterlength moisture --logger FILE.csv [LAYOUT.json] reads the record of a climate logger instead: rows it could
                not count, hours in each band of humidity, what wood would settle at, what a plate came to, and the steps that
                matter. What the file shows of its layout is taken from it; the rest stands in LAYOUT.json, every key optional:
                  day_order              day, month or year: what comes first in a date of digits; asked, never guessed
                  header_lines, separator, decimal_sign, time_column, date_column, temperature_column, humidity_column
                  temperature_unit       C or F
                  humidity_unit          pct or fraction
                  zone                   where the logger hangs, such as Europe/Berlin; UTC when left out
                  clock                  fixed, or summer time when the clock of the logger follows it
                  plate_mm, cut, faces   the plate: 2.5, quarter and one (open face) when left out
                """;
    }

    @Override
    public Reply answer(DocumentReader question) {
        Air now = Air.read(question);
        Optional<Air> before =
                question.find("from").map(DocumentValue::asObject).map(Air::read);
        Optional<Plate> plate = Plate.find(question);
        if (question.hasProblems()) {
            return new Reply.Refused(question.problems());
        }
        return new Reply.Answered(before.map(air -> changed(air.equilibrium(), now.equilibrium(), plate))
                .orElseGet(() -> settled(now.equilibrium(), plate)));
    }

    private static AnswerDocument settled(EquilibriumMoisture.Value now, Optional<Plate> plate) {
        List<String> caveats = new ArrayList<>(texts(now.caveats()));
        if (plate.isPresent()) {
            caveats.add("Without \"from\", the air before, there is no change of width.");
        }
        return moisture(now).putTexts("caveats", caveats);
    }

    private static AnswerDocument changed(
            EquilibriumMoisture.Value before, EquilibriumMoisture.Value now, Optional<Plate> plate) {
        AnswerDocument answer = moisture(now)
                .put("from_emc_pct", before.moisture().pct())
                .put("change_pct", now.moisture().pct() - before.moisture().pct());
        List<String> caveats = new ArrayList<>(texts(now.caveats()));
        plate.map(wood -> wood.change(before.moisture(), now.moisture())).ifPresent(change -> {
            answer.put("width_change_mm", band(change));
            caveats.addAll(texts(change.caveats()));
        });
        return answer.putTexts("caveats", caveats);
    }

    private static AnswerDocument moisture(EquilibriumMoisture.Value now) {
        return new AnswerDocument()
                .put("emc_pct", now.moisture().pct())
                .put("emc_uncertainty_pct", now.uncertainty_pct());
    }

    private static AnswerDocument band(WidthChange change) {
        return new AnswerDocument()
                .put("low", change.low().mm())
                .put("typical", change.typical().mm())
                .put("high", change.high().mm());
    }

    private static List<String> texts(List<WoodCaveat> caveats) {
        return caveats.stream().map(WoodCaveat::text).toList();
    }
}

package afterlength.start.verbs;

import afterlength.craft.varnish.BatchAnswer;
import afterlength.craft.varnish.Film;
import afterlength.craft.varnish.Ingredient;
import afterlength.craft.varnish.OilToResin;
import afterlength.craft.varnish.Part;
import afterlength.craft.varnish.VarnishBatch;
import afterlength.start.document.AnswerDocument;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.DocumentValue;
import afterlength.start.document.Range;
import afterlength.start.document.Reply;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a batch of varnish holds, how rich in oil it is, and how far it goes. */
final class VarnishVerb implements Verb {
    private static final int MOST_INGREDIENTS = 50;

    @Override
    public String name() {
        return "varnish";
    }

    @Override
    public String summary() {
        return "what a batch of varnish holds by volume, how rich in oil it is, and how thick its coats lie";
    }

    @Override
    public String example() {
        return """
                {
                  "ingredients": [
                    { "name": "linseed oil", "mass_g": 50, "density_kg_m3": 930, "solid": true, "part": "oil" },
                    { "name": "colophony", "mass_g": 50, "density_kg_m3": 1070, "solid": true, "part": "resin" },
                    { "name": "oil of turpentine", "mass_g": 100, "density_kg_m3": 870, "solid": false }
                  ],
                  "area_m2": 0.15,
                  "coats": 4,
                  "dry_um": 30
                }
                """;
    }

    @Override
    public String keys() {
        return """
                  ingredients   name, mass_g, density_kg_m3, solid (true if it stays in the film), and optional part: oil,
                                resin, other solid or solvent; oil and resin are needed for oil_to_resin
                  area_m2       optional: the area to be coated
                  dry_um        optional: the wanted build, all coats together
                  coats         optional, with dry_um: in how many coats

                The answer holds mass_g, volume_mL, mass_solids_pct, volume_solids_pct; oil_to_resin with its scale, value and
                class, and other_scales, where the same varnish may have another class; with dry_um a film: wet_um in all,
                coverage_m2_per_L, with area_m2 volume_mL, with coats the same for one coat.
                """;
    }

    @Override
    public Reply answer(DocumentReader question) {
        List<Ingredient> ingredients = question.get("ingredients").asList(1, MOST_INGREDIENTS).stream()
                .map(DocumentValue::asObject)
                .map(VarnishVerb::ingredient)
                .toList();
        Optional<Double> area_m2 = question.find("area_m2").map(area -> area.asNumber(Range.positive(100, "m²")));
        Optional<Double> dry_um = question.find("dry_um").map(dry -> dry.asNumber(Range.positive(1000, "µm")));
        Optional<Double> coats = question.find("coats").map(count -> count.asNumber(Range.between(1, 100, "")));
        if (coats.isPresent() && dry_um.isEmpty()) {
            question.refuse(
                    "/coats", null, "Coats alone make no film. Add dry_um, the wanted build, or leave coats out.");
        }
        if (question.hasProblems()) {
            return new Reply.Refused(question.problems());
        }
        BatchAnswer batch = VarnishBatch.of(ingredients);
        if (batch instanceof BatchAnswer.Refused refused) {
            return new Reply.Refused(refused.problems());
        }
        return new Reply.Answered(answer((VarnishBatch) batch, area_m2, dry_um, coats));
    }

    private static Ingredient ingredient(DocumentReader one) {
        boolean solid = one.get("solid").asTruth();
        Optional<Part> named = one.find("part").flatMap(part -> part.asOneOf(List.of(Part.values()), Part::words));
        if (named.isPresent() && named.get().solid() != solid) {
            one.refuse(
                    "/part",
                    named.get().words(),
                    "The part is " + named.get().words() + ", and solid is " + solid
                            + "; oil, resin and other solid stay in the film, a solvent does not.");
        }
        return new Ingredient(
                one.get("name").asText(),
                one.get("mass_g").asNumber(Range.any("g")),
                one.get("density_kg_m3").asNumber(Range.any("kg/m³")),
                named.orElse(solid ? Part.OTHER_SOLID : Part.SOLVENT));
    }

    private static AnswerDocument answer(
            VarnishBatch batch, Optional<Double> area_m2, Optional<Double> dry_um, Optional<Double> coats) {
        List<String> caveats = new ArrayList<>(List.of(
                "Volumes of the ingredients are added; a mixture may shrink, and drying oil gains mass from the air."));
        AnswerDocument answer = new AnswerDocument()
                .put("mass_g", batch.mass_g())
                .put("volume_mL", batch.volume_mL())
                .put("mass_solids_pct", batch.massSolids_pct())
                .put("volume_solids_pct", batch.volumeSolids_pct());
        batch.oilToResin().ifPresent(richness -> putScales(answer, richness, caveats));
        if (dry_um.isPresent() && batch.volumeSolids_pct() > 0) {
            answer.put("film", film(new Film(batch.volumeSolids_pct()), dry_um.get(), area_m2, coats));
            caveats.add("An even film: what soaks in, runs off and stays in the brush is not counted.");
        }
        return answer.putTexts("caveats", caveats);
    }

    private static void putScales(AnswerDocument answer, OilToResin richness, List<String> caveats) {
        answer.put("oil_to_resin", scale("mass of oil : mass of resin", richness.ratio(), richness.richness()));
        answer.putObjects(
                "other_scales",
                List.of(
                        scale(
                                "alkyds, % oil of oil and resin",
                                richness.inPercent().pct(), richness.inPercent().length()),
                        scale(
                                "US gallons of oil to 100 lb of resin",
                                richness.inGallons().gallonsPer100Lb(),
                                richness.inGallons().length())));
        if (richness.slow()) {
            caveats.add("At least one scale calls this long in oil: soft, slow, and it may never dry hard.");
        }
    }

    private static AnswerDocument scale(String name, double value, Enum<?> word) {
        return new AnswerDocument()
                .put("scale", name)
                .put("value", value)
                .put("class", word.name().toLowerCase(Locale.ROOT));
    }

    private static AnswerDocument film(Film film, double dry_um, Optional<Double> area_m2, Optional<Double> coats) {
        AnswerDocument answer = new AnswerDocument()
                .put("dry_um", dry_um)
                .put("wet_um", film.wetFor_um(dry_um))
                .put("coverage_m2_per_L", film.coverage_m2_L(dry_um));
        area_m2.ifPresent(area -> answer.put("volume_mL", film.volume_mL(dry_um, area)));
        coats.ifPresent(count -> {
            answer.put("wet_um_per_coat", film.wetFor_um(dry_um) / count);
            area_m2.ifPresent(area -> answer.put("volume_mL_per_coat", film.volume_mL(dry_um, area) / count));
        });
        return answer;
    }
}

package afterlength.start.verbs;

import afterlength.craft.colour.Colorant;
import afterlength.craft.colour.Lab;
import afterlength.craft.colour.RecipeLimits;
import afterlength.craft.colour.RecipeQuestion;
import afterlength.craft.colour.Saunderson;
import afterlength.craft.colour.Spectrum;
import afterlength.craft.colour.Wavelengths;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.DocumentValue;
import afterlength.start.document.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A question for a recipe as it is written in a document. */
final class RetouchDocument {
    private static final int MOST_COLORANTS = 30;
    private static final Range REFLECTANCE = Range.positive(1, "");
    private static final Range FILM = Range.between(0, 1e6, "per µm");

    private final DocumentReader document;
    private boolean spectral = true;

    private RetouchDocument(DocumentReader document) {
        this.document = document;
    }

    /**
     * A question and how well it is known.
     *
     * @param spectral whether ground and target were both given as reflectances
     */
    record Read(RecipeQuestion question, boolean spectral) {}

    static Optional<Read> find(DocumentReader document) {
        return new RetouchDocument(document).find();
    }

    private Optional<Read> find() {
        List<DocumentReader> colorants = document.get("palette").asList(1, MOST_COLORANTS).stream()
                .map(DocumentValue::asObject)
                .toList();
        DocumentReader ground = document.get("ground").asObject();
        DocumentReader target = document.get("target").asObject();
        Optional<Spectrum> measuredGround = measured(ground);
        Optional<Spectrum> measuredTarget = measured(target);
        RecipeLimits limits = limits();
        List<Values> values = colorants.stream().map(RetouchDocument::values).toList();
        Optional<Wavelengths> wavelengths = measuredTarget
                .or(() -> measuredGround)
                .map(Spectrum::wavelengths)
                .or(() -> wavelengths(values));
        if (wavelengths.isEmpty() || document.hasProblems()) {
            return Optional.empty();
        }
        List<Colorant> palette = palette(values, wavelengths.get());
        Optional<Spectrum> known = measuredGround.or(() -> smooth(ground, wavelengths.get()));
        Optional<Spectrum> wanted = measuredTarget.or(() -> smooth(target, wavelengths.get()));
        if (known.isEmpty() || wanted.isEmpty() || document.hasProblems()) {
            return Optional.empty();
        }
        return Optional.of(
                new Read(new RecipeQuestion(known.get(), wanted.get(), palette, limits, Saunderson.VARNISH), spectral));
    }

    /** A reflectance; empty when the colour is given as L*a*b*, or wrongly. */
    private Optional<Spectrum> measured(DocumentReader colour) {
        boolean reflectance = colour.hasAny("reflectance");
        if (reflectance == colour.hasAny("lab")) {
            colour.refuse("", null, "A colour needs one of reflectance or lab. Give one of them.");
            return Optional.empty();
        }
        if (!reflectance) {
            spectral = false;
            return Optional.empty();
        }
        DocumentReader at = colour.get("reflectance").asObject();
        Optional<double[]> values = ColourDocument.findValues(at.get("values"), REFLECTANCE);
        return ColourDocument.findWavelengths(at, values.map(all -> all.length).orElse(0))
                .map(wavelengths -> Spectrum.of(wavelengths, values.orElseThrow()));
    }

    private static Optional<Spectrum> smooth(DocumentReader colour, Wavelengths wavelengths) {
        Lab lab = ColourDocument.lab(colour.get("lab"));
        return ColourDocument.findSmooth(colour, lab, wavelengths);
    }

    private RecipeLimits limits() {
        Optional<DocumentReader> limits = document.find("limits").map(DocumentValue::asObject);
        double colorants = limits.flatMap(given -> given.find("colorants"))
                .map(value -> value.asNumber(Range.between(1, RecipeLimits.MOST_COLORANTS, "")))
                .orElse((double) RecipeLimits.MOST_COLORANTS);
        double film_um = limits.flatMap(given -> given.find("film_um"))
                .map(value -> value.asNumber(Range.positive(1000, "µm")))
                .orElse(RecipeLimits.USUAL_FILM_UM);
        return new RecipeLimits((int) colorants, film_um);
    }

    /** A colorant's numbers before it is known at which wavelengths they stand. */
    private record Values(DocumentReader at, String name, Optional<double[]> k, Optional<double[]> s) {}

    private static Values values(DocumentReader colorant) {
        return new Values(
                colorant,
                colorant.get("name").asText(),
                ColourDocument.findValues(colorant.get("k_per_um"), FILM),
                ColourDocument.findValues(colorant.get("s_per_um"), FILM));
    }

    /** Where no reflectance says it, the document says it, or the palette has the usual 36 values. */
    private Optional<Wavelengths> wavelengths(List<Values> values) {
        int count = values.stream()
                .flatMap(one -> one.k().stream())
                .mapToInt(all -> all.length)
                .findFirst()
                .orElse(0);
        Optional<DocumentReader> said = document.find("wavelengths").map(DocumentValue::asObject);
        if (said.isPresent()) {
            return ColourDocument.findWavelengths(said.get(), count);
        }
        if (count != Wavelengths.usual().count()) {
            document.refuse(
                    "/palette",
                    null,
                    "At which wavelengths the palette is given is not said: ground and target are colours without"
                            + " a spectrum, and there are " + count
                            + " values, not the usual 36 from 380 to 730 nm. Add \"wavelengths\" with"
                            + " start_nm and step_nm.");
            return Optional.empty();
        }
        return Optional.of(Wavelengths.usual());
    }

    private static List<Colorant> palette(List<Values> values, Wavelengths wavelengths) {
        List<Colorant> palette = new ArrayList<>();
        for (Values one : values) {
            double[] k = one.k().orElseThrow();
            double[] s = one.s().orElseThrow();
            if (k.length != wavelengths.count() || s.length != wavelengths.count()) {
                one.at()
                        .refuse(
                                "",
                                one.name(),
                                "The colorant " + one.name() + " has " + k.length + " values of k and " + s.length
                                        + " of s; there are " + wavelengths.count() + " wavelengths, from "
                                        + wavelengths.first_nm() + " to "
                                        + wavelengths.last_nm() + " nm by " + wavelengths.step_nm() + ".");
            } else {
                palette.add(new Colorant(one.name(), Spectrum.of(wavelengths, k), Spectrum.of(wavelengths, s)));
            }
        }
        return palette;
    }
}

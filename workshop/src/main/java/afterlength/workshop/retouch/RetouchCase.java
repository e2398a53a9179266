package afterlength.workshop.retouch;

import afterlength.craft.colour.ColourDifference;
import afterlength.craft.colour.Light;
import afterlength.craft.colour.RecipeLimits;
import afterlength.craft.colour.RecipeQuestion;
import afterlength.craft.colour.Saunderson;
import afterlength.craft.colour.Spectrum;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A loss with its palette and the coats laid so far, and the question that stands: before the first coat the loss as it is, and
 * after a coat that was measured what is still missing, with the colours already used.
 */
record RetouchCase(Retouch retouch, List<PaletteColour> palette, List<LaidCoat> coats) {
    /** A film thinner than this cannot be laid. Our own choice. */
    private static final double LEAST_COATS = 0.02;

    RetouchCase {
        palette = List.copyOf(palette);
        coats = List.copyOf(coats);
    }

    boolean begun() {
        return !coats.isEmpty();
    }

    LaidCoat lastCoat() {
        return coats.get(coats.size() - 1);
    }

    /** A coat was laid and nobody has measured what came of it. */
    boolean awaitsReading() {
        return begun() && lastCoat().reading().isEmpty();
    }

    /** What the place looks like now: the ground, or the reading after the last coat. */
    Optional<Spectrum> now() {
        return begun() ? lastCoat().reading().map(ColourReading::colour) : Optional.of(retouch.ground());
    }

    double laidCoats() {
        return coats.stream().mapToDouble(LaidCoat::coats).sum();
    }

    double leftCoats() {
        return retouch.filmCoats() - laidCoats();
    }

    boolean filmIsFull() {
        return leftCoats() < LEAST_COATS;
    }

    /** Whether every colour in the question was measured as a reflectance. */
    boolean spectral() {
        return retouch.groundSpectral()
                && retouch.targetSpectral()
                && palette.stream().allMatch(PaletteColour::spectral)
                && coats.stream().flatMap(coat -> coat.reading().stream()).allMatch(ColourReading::spectral);
    }

    /** Nothing to ask while a coat is not measured or the film is as thick as it may be. */
    Optional<RecipeQuestion> question() {
        if (awaitsReading() || filmIsFull()) {
            return Optional.empty();
        }
        RecipeQuestion first = new RecipeQuestion(
                retouch.ground(),
                retouch.target(),
                palette.stream().map(PaletteColour::colorant).toList(),
                new RecipeLimits(retouch.colorants(), retouch.filmCoats()),
                Saunderson.VARNISH);
        return now().map(seen ->
                begun() ? first.after(seen, used(), new RecipeLimits(retouch.colorants(), leftCoats())) : first);
    }

    private Set<String> used() {
        Set<String> used = new HashSet<>();
        coats.forEach(coat -> coat.parts().forEach(part -> used.add(Long.toString(part.colourId()))));
        return used;
    }

    /** ΔE00 of what the place looks like to the varnish beside it. */
    double difference(Spectrum seen, Light light) {
        return ColourDifference.of(Seen.lab(retouch.target(), light), Seen.lab(seen, light));
    }

    PaletteColour colour(String number) {
        return palette.stream()
                .filter(one -> Long.toString(one.id()).equals(number))
                .findFirst()
                .orElseThrow();
    }
}

package afterlength.workshop.retouch;

import afterlength.craft.colour.RecipeLimits;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.examination.Finding;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads a loss from what was typed. */
final class RetouchForm {
    static final String USUAL_FILM_COATS = "3";

    private static final double THINNEST_FILM = 0.1;
    private static final double THICKEST_FILM = 20;

    /** More colours make the search slow and its recipes no better. */
    private static final int LARGEST_PALETTE = 30;

    private final Typed typed;
    private final List<Finding> findings;
    private final List<PaletteColour> palette;

    private RetouchForm(Typed typed, List<Finding> findings, List<PaletteColour> palette) {
        this.typed = typed;
        this.findings = findings;
        this.palette = palette;
    }

    /** A loss with the colours that may be used for it. */
    record Read(Retouch retouch, List<Long> colours) {}

    /** Null when a problem was noted. */
    static @Nullable Read read(
            Typed typed, long visitId, List<Finding> findings, List<PaletteColour> palette, Instant now) {
        return new RetouchForm(typed, findings, palette).read(visitId, now);
    }

    private @Nullable Read read(long visitId, Instant now) {
        String place = typed.required("place", "The place", 200);
        Long finding = finding();
        ColourReading ground = ColourForm.read(typed, "ground", "The ground");
        ColourReading target = ColourForm.read(typed, "target", "The varnish beside it");
        List<Long> colours = colours();
        Integer most = typed.whole("colorants", "The colours in one recipe", 1, RecipeLimits.MOST_COLORANTS);
        double film = typed.requiredDecimal("film_coats", "The thickest film", "coats", THINNEST_FILM, THICKEST_FILM);
        String hand = typed.required("hand", "Whose hands", 60);
        if (!typed.sound() || ground == null || target == null) {
            return null;
        }
        return new Read(
                new Retouch(
                        0,
                        visitId,
                        null,
                        false,
                        finding,
                        place,
                        ground.colourClass(),
                        ground.spectral(),
                        ground.colour(),
                        target.colourClass(),
                        target.spectral(),
                        target.colour(),
                        most == null ? RecipeLimits.MOST_COLORANTS : most,
                        film,
                        now,
                        hand),
                colours);
    }

    private @Nullable Long finding() {
        String text = typed.raw("finding");
        if (text.isBlank()) {
            return null;
        }
        return findings.stream()
                .map(Finding::id)
                .filter(id -> Long.toString(id).equals(text))
                .findFirst()
                .orElseGet(() -> {
                    typed.note("finding", "The finding is none of this visit; choose one of the list, or none.");
                    return null;
                });
    }

    private List<Long> colours() {
        List<Long> chosen = palette.stream()
                .map(PaletteColour::id)
                .filter(id -> typed.ticked("colours", Long.toString(id)))
                .toList();
        if (chosen.isEmpty() || chosen.size() > LARGEST_PALETTE) {
            typed.note(
                    "colours",
                    (chosen.isEmpty() ? "No colours are" : chosen.size() + " colours are") + " chosen; choose 1 to "
                            + LARGEST_PALETTE + " of the palette.");
        }
        return chosen;
    }
}

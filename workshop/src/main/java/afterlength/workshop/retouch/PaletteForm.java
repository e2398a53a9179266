package afterlength.workshop.retouch;

import afterlength.craft.colour.ColourClass;
import afterlength.craft.colour.Drawdown;
import afterlength.craft.colour.FittedColorant;
import afterlength.craft.colour.Spectrum;
import afterlength.workshop.desk.Typed;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads a colour for the palette: its words, and its films from a file or from typed colours. */
final class PaletteForm {
    /** Rows of films on the form. */
    static final int FILMS = 4;

    private static final double THINNEST_COATS = 0.05;
    private static final double THICKEST_COATS = 20;

    /** Grounds nearer than this in every reflectance are one ground. Our own choice, far above what an instrument errs by. */
    private static final double ONE_GROUND = 0.05;

    private final Typed typed;

    private PaletteForm(Typed typed) {
        this.typed = typed;
    }

    /** From the samples of a file; null when a problem was noted. */
    static @Nullable NewColour ofFile(Typed typed, InstrumentFile file) {
        PaletteForm form = new PaletteForm(typed);
        return form.colour(ColourClass.INSTRUMENT, true, form.fromFile(file.readings()));
    }

    /** From typed colours; null when a problem was noted. */
    static @Nullable NewColour ofLab(Typed typed) {
        PaletteForm form = new PaletteForm(typed);
        ColourClass colourClass = typed.choice("colour_class", "How the colours are known", ColourClass.class);
        return form.colour(colourClass == null ? ColourClass.UNCALIBRATED : colourClass, false, form.fromLab());
    }

    private @Nullable NewColour colour(ColourClass colourClass, boolean spectral, List<Drawdown> films) {
        String name = typed.required("name", "The name of the colour", 80);
        String medium = typed.required("medium", "What it is drawn down in", 120);
        String reversible = typed.required("reversible_with", "What takes it off again", 200);
        String hand = typed.required("hand", "Whose hands", 60);
        if (typed.sound()) {
            checkGrounds(films);
        }
        return typed.sound() ? new NewColour(name, medium, reversible, colourClass, spectral, films, hand) : null;
    }

    /** The fit, or a problem beside the films. */
    static Optional<FittedColorant> fit(Typed typed, NewColour colour) {
        try {
            return Optional.of(colour.fitted());
        } catch (IllegalArgumentException unsettled) {
            typed.note(
                    "films/0/coats",
                    "These films do not belong to one colour: " + unsettled.getMessage()
                            + ". Check which film lies on which ground, and the coats.");
            return Optional.empty();
        }
    }

    private void checkGrounds(List<Drawdown> films) {
        if (films.size() < 2) {
            typed.note(
                    "films/0/coats",
                    "A colour needs at least two films, over light and over dark; there "
                            + (films.size() == 1 ? "is 1" : "are none")
                            + ". Four do well: half a coat and one over white, one and two over black.");
        } else if (films.stream()
                .allMatch(one -> sameGround(one.ground(), films.get(0).ground()))) {
            typed.note(
                    "films/0/coats",
                    "All films lie over one ground, so what the colour covers cannot be told from what it colours. Add a film"
                            + " over the other ground, such as black.");
        }
    }

    private static boolean sameGround(Spectrum first, Spectrum second) {
        double[] a = first.values();
        double[] b = second.values();
        double farthest = 0;
        for (int n = 0; n < a.length; n++) {
            farthest = Math.max(farthest, Math.abs(a[n] - b[n]));
        }
        return farthest < ONE_GROUND;
    }

    private List<Drawdown> fromFile(List<InstrumentReading> readings) {
        List<Drawdown> films = new ArrayList<>();
        for (int n = 0; n < FILMS; n++) {
            String at = "films/" + n + "/";
            if (!typed.raw(at + "film").isBlank()) {
                Spectrum film = sample(readings, at + "film", "The film of row " + (n + 1));
                Spectrum ground = sample(readings, at + "ground", "The ground of row " + (n + 1));
                add(films, n, ground, film);
            }
        }
        return films;
    }

    private @Nullable Spectrum sample(List<InstrumentReading> readings, String at, String label) {
        String text = typed.raw(at);
        if (text.matches("\\d{1,4}") && Integer.parseInt(text) < readings.size()) {
            return readings.get(Integer.parseInt(text)).spectrum();
        }
        typed.note(at, label + " is not chosen; choose one of the samples.");
        return null;
    }

    private List<Drawdown> fromLab() {
        List<Drawdown> films = new ArrayList<>();
        for (int n = 0; n < FILMS; n++) {
            if (filled(n)) {
                String at = "films/" + n + "/";
                Spectrum ground = ColourForm.readLab(typed, at + "ground", "The ground of row " + (n + 1));
                Spectrum film = ColourForm.readLab(typed, at + "film", "The film of row " + (n + 1));
                add(films, n, ground, film);
            }
        }
        return films;
    }

    private boolean filled(int row) {
        return Arrays.stream(new String[] {"ground_l", "ground_a", "ground_b", "film_l", "film_a", "film_b", "coats"})
                .anyMatch(key -> !typed.raw("films/" + row + "/" + key).isBlank());
    }

    private void add(List<Drawdown> films, int row, @Nullable Spectrum ground, @Nullable Spectrum film) {
        double coats = typed.requiredDecimal(
                "films/" + row + "/coats", "The coats of row " + (row + 1), "coats", THINNEST_COATS, THICKEST_COATS);
        if (ground != null && film != null && !Double.isNaN(coats)) {
            films.add(new Drawdown(coats, ground, film));
        }
    }
}

package afterlength.workshop.setup;

import afterlength.craft.setup.FittedString;
import afterlength.craft.setup.Pitch;
import afterlength.craft.setup.StringPull;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A string of a set-up in the columns of its table; its places are there only when they were measured one by one. */
record StringRow(
        String name,
        double diameterMm,
        @Nullable Double tensionN,
        String note,
        @Nullable Double linearDensityGM,
        @Nullable Double nutYMm,
        @Nullable Double bridgeYMm) {

    FittedString fitted(double a4_Hz) {
        return new FittedString(name, diameterMm, pull(tensionN, linearDensityGM, note, a4_Hz));
    }

    /** What is known of a pull: its tension, or the mass per length of a string with a note. */
    static StringPull pull(@Nullable Double tension_N, @Nullable Double density_g_m, String note, double a4_Hz) {
        if (tension_N != null) {
            return new StringPull.Tension(tension_N);
        }
        if (density_g_m == null) {
            return new StringPull.Unknown();
        }
        return Pitch.find(note)
                .<StringPull>map(pitch -> new StringPull.DensityAndPitch(
                        density_g_m, pitch.frequency(a4_Hz).hertz()))
                .orElseGet(StringPull.Unknown::new);
    }

    Map<String, @Nullable Object> columns(long setupId, int position) {
        Map<String, @Nullable Object> columns = new LinkedHashMap<>();
        columns.put("setup", setupId);
        columns.put("position", position);
        columns.put("name", name);
        columns.put("diameter", diameterMm);
        columns.put("tension", tensionN);
        columns.put("note", note);
        columns.put("density", linearDensityGM);
        columns.put("nutY", nutYMm);
        columns.put("bridgeY", bridgeYMm);
        return columns;
    }
}

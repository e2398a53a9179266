package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeInputs;
import afterlength.craft.setup.FittedString;
import afterlength.craft.setup.StringPull;
import afterlength.craft.setup.StringSpacing;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** The strings of a set-up as rows. */
final class StringRows {
    private final BridgeInputs inputs;
    private final List<String> notes;

    private StringRows(SetupBench bench) {
        this.inputs = bench.inputs();
        this.notes = bench.notes();
    }

    static List<StringRow> of(SetupBench bench) {
        StringRows rows = new StringRows(bench);
        return IntStream.range(0, bench.inputs().strings().size())
                .mapToObj(rows::row)
                .toList();
    }

    private StringRow row(int string) {
        FittedString fitted = inputs.strings().get(string);
        return new StringRow(
                fitted.name(),
                fitted.diameter_mm(),
                fitted.pull() instanceof StringPull.Tension known ? known.tension_N() : null,
                notes.get(string),
                fitted.pull() instanceof StringPull.DensityAndPitch known ? known.linearDensity_g_m() : null,
                place(inputs.nutSpacing(), string),
                place(inputs.bridgeSpacing(), string));
    }

    private static @Nullable Double place(StringSpacing spacing, int string) {
        return spacing instanceof StringSpacing.Given given ? given.y_mm().get(string) : null;
    }
}

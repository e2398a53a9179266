package afterlength.workshop.glue;

import afterlength.craft.glue.Spread;
import afterlength.craft.glue.WorkingWindow;
import afterlength.craft.units.Temperature;
import java.util.List;
import java.util.stream.Stream;

/** What warming the parts gives: one temperature, one window. */
record WindowLine(Temperature part, WorkingWindow.Known window) {
    private static final List<Temperature> PARTS =
            Stream.of(15, 20, 25, 30, 35).map(Temperature::ofCelsius).toList();

    static List<WindowLine> of(Spread spread) {
        return WorkingWindow.onParts(spread, PARTS).stream()
                .map(part -> new WindowLine(part.part(), (WorkingWindow.Known) part.window()))
                .toList();
    }
}

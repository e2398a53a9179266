package afterlength.workshop.setup;

import afterlength.craft.setup.BowedString;
import afterlength.craft.units.Angle;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.paper.Anchor;
import afterlength.workshop.paper.Point;
import afterlength.workshop.paper.Sketch;
import afterlength.workshop.paper.TableBlock;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** The room of the bow string by string: open, and stopped at the octave. A dash stands where a limit is not known. */
final class BowTable {
    private static final List<TableBlock.Column> COLUMNS = List.of(
            new TableBlock.Column("string", 14, Anchor.START),
            new TableBlock.Column("steepest", 19, Anchor.END),
            new TableBlock.Column("flattest", 19, Anchor.END),
            new TableBlock.Column("room, open", 22, Anchor.END),
            new TableBlock.Column("room, octave", 25, Anchor.END),
            new TableBlock.Column("over neighbours", 30, Anchor.END),
            new TableBlock.Column("no room from", 26, Anchor.END));
    private static final String NOT_KNOWN = "–";

    private BowTable() {}

    static double height_mm(SheetBow bow) {
        return TableBlock.height_mm(bow.open().strings().size());
    }

    static void put(Sketch sketch, Point topLeft, SheetBow bow) {
        List<List<String>> rows = IntStream.range(0, bow.open().strings().size())
                .mapToObj(string -> row(
                        bow.open().strings().get(string), bow.octave().strings().get(string)))
                .toList();
        TableBlock.put(sketch, topLeft, COLUMNS, rows);
    }

    private static List<String> row(BowedString open, BowedString octave) {
        return List.of(
                open.name(),
                degrees(open.findLimitBass()),
                degrees(open.findLimitTreble()),
                degrees(open.findClearAngle()),
                degrees(octave.findClearAngle()),
                octave.findMargin()
                        .map(margin -> Figures.hundredths(margin.mm()) + " mm")
                        .orElse(NOT_KNOWN),
                octave.findForceMeetingNeighbours()
                        .map(force -> Figures.tenths(force.newton()) + " N")
                        .orElse(NOT_KNOWN));
    }

    private static String degrees(Optional<Angle> angle) {
        return angle.map(known -> Figures.tenths(known.deg()) + "°").orElse(NOT_KNOWN);
    }
}

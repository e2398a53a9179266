package afterlength.workshop.setup;

import afterlength.craft.setup.BowCell;
import afterlength.craft.setup.BowMap;
import afterlength.craft.setup.BowPlace;
import afterlength.workshop.desk.Figures;
import java.util.List;
import java.util.Optional;

/** What the bow has room for, in sentences. */
final class BowWords {
    private static final List<String> ORDINALS = List.of("open", "a semitone up");

    private BowWords() {}

    /** Where the fans are reckoned, and with which bow. */
    static String place(BenchBow bow) {
        BowPlace at = bow.at();
        return "Clear angles with the bow " + Figures.mm(at.distance_mm(), 0) + " from the bridge, "
                + (at.force_N() == 0 ? "not pressing" : "pressing with " + Figures.plain(at.force_N()) + " N")
                + ", each string " + (bow.semitones() == 0 ? "open" : "stopped " + stop(bow.semitones()))
                + ", its neighbours open.";
    }

    static String stop(int semitones) {
        return semitones < ORDINALS.size()
                ? ORDINALS.get(semitones)
                : semitones == 12 ? "at the octave" : semitones == 24 ? "at two octaves" : semitones + " semitones up";
    }

    /** The tightest place of a map in a sentence; empty when nothing on it can be played or no string has two limits. */
    static Optional<String> tightest(BowMap map) {
        return map.findTightest().map(cell -> sentence(map, cell));
    }

    private static String sentence(BowMap map, BowCell cell) {
        String where = "the " + map.names().get(cell.string()) + " string, " + stop(cell.semitones()) + ", bow "
                + Figures.mm(cell.distance_mm(), 0) + " from the bridge"
                + (cell.force_N() == 0 ? "" : " with " + Figures.plain(cell.force_N()) + " N");
        return cell.opening_deg() > 0
                ? "Tightest is " + where + ": " + Figures.fixed(cell.opening_deg(), 1) + "° of room."
                : "There is no room left on " + where + ": the bow meets a neighbour first.";
    }

    /** From which force on a string meets its neighbours. */
    static Optional<String> meeting(BowMap map, int string) {
        return map.findEarliestMeeting(string)
                .map(cell -> Figures.fixed(cell.meets_N(), 1) + " N, " + stop(cell.semitones()));
    }
}

package afterlength.workshop.setup;

import afterlength.craft.setup.BowCell;
import afterlength.craft.setup.BowMap;
import afterlength.craft.setup.BowRefused;
import afterlength.craft.setup.Caveat;
import afterlength.craft.units.Problem;
import afterlength.workshop.desk.Figures;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * The room of the bow over strings and stops, as a table; and its tightest place for each of the usual distances and forces. Room
 * is written in every cell; hatching and the mark of the tightest repeat it for the eye.
 */
record MapPart(BenchBow bow, Optional<BowCell> tightestCell) {
    /** Steps of the hatching, in degrees; a scale to read by, not a judgement. */
    private static final double LITTLE_DEG = 5;

    private static final double SOME_DEG = 10;

    static MapPart of(BenchBow bow) {
        return new MapPart(bow, bow.findMap().flatMap(BowMap::findTightest));
    }

    /** One cell as it is shown. */
    record Cell(String words, String kind) {}

    List<Problem> problems() {
        return bow.map() instanceof BowRefused refused ? refused.problems() : List.of();
    }

    List<String> names() {
        return bow.findMap().map(BowMap::names).orElse(List.of());
    }

    /** Stops at which at least one string can be played. */
    List<Integer> stops() {
        return bow.findMap()
                .map(map -> map.cells().stream()
                        .map(BowCell::semitones)
                        .distinct()
                        .sorted()
                        .toList())
                .orElse(List.of());
    }

    static String stop(int semitones) {
        return semitones == 0 ? "open" : Integer.toString(semitones);
    }

    List<Cell> row(int semitones) {
        BowMap map = bow.findMap().orElseThrow();
        List<BowCell> cells = map.cells().stream()
                .filter(cell -> cell.semitones() == semitones)
                .toList();
        return IntStream.range(0, map.names().size())
                .mapToObj(string -> cells.stream()
                        .filter(cell -> cell.string() == string)
                        .findFirst()
                        .map(cell ->
                                cell(cell, tightestCell.filter(cell::equals).isPresent()))
                        .orElse(new Cell("–", "none")))
                .toList();
    }

    private static Cell cell(BowCell cell, boolean isTightest) {
        return new Cell(
                Figures.fixed(cell.clearAngle_deg(), 1), kind(cell.opening_deg()) + (isTightest ? " tightest" : ""));
    }

    private static String kind(double opening_deg) {
        if (opening_deg <= 0) {
            return "crossed";
        }
        return opening_deg < LITTLE_DEG ? "little" : opening_deg < SOME_DEG ? "some" : "much";
    }

    Optional<String> tightest() {
        return bow.findMap().flatMap(BowWords::tightest);
    }

    Optional<String> tightestOfAll() {
        return bow.findSurvey().flatMap(BowWords::tightest);
    }

    List<Double> distances() {
        return bow.findSurvey().map(map -> map.axes().distances_mm()).orElse(List.of());
    }

    List<Double> forces() {
        return bow.findSurvey().map(map -> map.axes().forces_N()).orElse(List.of());
    }

    /** The tightest place at one distance with one force. */
    String surveyed(double distance_mm, double force_N) {
        BowMap map = bow.findSurvey().orElseThrow();
        return map.cells().stream()
                .filter(cell -> cell.distance_mm() == distance_mm && cell.force_N() == force_N)
                .min((a, b) -> Double.compare(a.opening_deg(), b.opening_deg()))
                .map(cell -> Figures.fixed(cell.clearAngle_deg(), 1) + "° "
                        + map.names().get(cell.string()) + " " + stop(cell.semitones()))
                .orElse("–");
    }

    List<String> caveats() {
        Set<Caveat> all = new LinkedHashSet<>();
        bow.findMap().ifPresent(map -> all.addAll(map.caveats()));
        bow.findSurvey().ifPresent(map -> all.addAll(map.caveats()));
        return all.stream().map(BridgeWords::of).toList();
    }
}

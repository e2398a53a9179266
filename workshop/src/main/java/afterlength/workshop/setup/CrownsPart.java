package afterlength.workshop.setup;

import afterlength.craft.setup.BestRadius;
import afterlength.craft.setup.BowCell;
import afterlength.craft.setup.BowMapAxes;
import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.Crown;
import afterlength.craft.setup.CrownComparison;
import afterlength.craft.setup.CrownNotPossible;
import afterlength.craft.setup.CrownTried;
import afterlength.craft.setup.EvenPlayCrown;
import afterlength.craft.setup.RadiusCrown;
import afterlength.craft.setup.TemplateCrown;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.paper.SvgPen;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The radius, the maker's own template and even play on this instrument, in one table and one drawing.
 *
 * @param best the best plain arc, looked for only when the hand rests; null meanwhile
 */
record CrownsPart(CrownComparison comparison, @Nullable BestRadius best) {
    static CrownsPart of(BridgeShape shape, SetupBench bench, boolean resting) {
        BowMapAxes axes = BenchBow.usual(shape);
        List<Crown> crowns = new ArrayList<>();
        crowns.add(new RadiusCrown(bench.crownRadius_mm()));
        TemplateText template = TemplateText.read(bench.template());
        if (!template.points().isEmpty()) {
            crowns.add(new TemplateCrown(template.points()));
        }
        crowns.add(new EvenPlayCrown());
        CrownComparison comparison = CrownComparison.of(shape.inputs(), axes, crowns);
        boolean drawn = comparison.trials().stream().anyMatch(CrownTried.class::isInstance);
        return new CrownsPart(
                comparison,
                resting && drawn ? BestRadius.find(shape.inputs(), axes).orElse(null) : null);
    }

    List<CrownTried> tried() {
        return comparison.trials().stream()
                .flatMap(trial -> trial instanceof CrownTried tried ? Stream.of(tried) : Stream.empty())
                .toList();
    }

    /** Why a crown is missing from the table. */
    List<String> notPossible() {
        return comparison.trials().stream()
                .filter(CrownNotPossible.class::isInstance)
                .map(trial -> CrownKind.of(trial.crown()).words() + ": "
                        + ((CrownNotPossible) trial).problems().get(0).message())
                .toList();
    }

    List<String> names() {
        return tried().isEmpty()
                ? List.of()
                : tried().get(0).shape().strings().stream()
                        .map(string -> string.name())
                        .toList();
    }

    static String wood(CrownTried tried, int string) {
        return Figures.fixed(tried.shape().strings().get(string).woodHeight().mm(), 1);
    }

    static String centre(CrownTried tried) {
        return Figures.fixed(tried.shape().centreHeight().mm(), 1);
    }

    static String innerClearances(CrownTried tried) {
        return tried.shape().strings().subList(1, tried.shape().strings().size() - 1).stream()
                .map(string -> Figures.fixed(string.boardEndClearance().mm(), 1))
                .collect(Collectors.joining(", "));
    }

    static String room(CrownTried tried) {
        return tried.findOpening_deg().isPresent()
                ? Figures.fixed(tried.findOpening_deg().getAsDouble(), 1) + "°"
                : "–";
    }

    static String where(CrownTried tried) {
        return tried.map()
                .findTightest()
                .map((BowCell cell) -> tried.map().names().get(cell.string()) + ", " + BowWords.stop(cell.semitones()))
                .orElse("–");
    }

    private Optional<CrownTried> find(Class<? extends Crown> kind) {
        return tried().stream().filter(tried -> kind.isInstance(tried.crown())).findFirst();
    }

    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        Optional<CrownTried> even = find(EvenPlayCrown.class)
                .filter(tried -> tried.findOpening_deg().isPresent());
        Optional<CrownTried> radius =
                find(RadiusCrown.class).filter(tried -> tried.findOpening_deg().isPresent());
        if (even.isPresent() && radius.isPresent()) {
            sentences.add(CrownWords.gain(even.get(), radius.get()));
        }
        if (even.isPresent() && best != null) {
            sentences.add(CrownWords.best(best, even.get().findOpening_deg().orElseThrow()));
        }
        return sentences;
    }

    String drawing() {
        return tried().isEmpty() ? "" : SvgPen.forScreen(CrownsDrawing.of(tried()));
    }
}

package afterlength.workshop.setup;

import afterlength.craft.setup.Bridge;
import afterlength.craft.setup.BridgeAnswer;
import afterlength.craft.setup.BridgeInputs;
import afterlength.craft.setup.BridgeShape;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import gg.jte.Content;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Everything on the page that follows the fingers, by the id of the place where it stands. A part is missing while it cannot be
 * drawn; its place is then empty.
 */
record LiveBench(Map<String, Content> parts) {
    private static final Content NOTHING = output -> {};

    /**
     * What follows from what was typed. Problems are noted in it.
     *
     * @param other the same visit's set-up of the other moment, as saved
     * @param resting whether the hand rests; while it drags, what takes longest is left for afterwards
     */
    static LiveBench of(Typed typed, SetupMoment moment, Optional<Setup> other, boolean resting) {
        SetupBench bench = SetupForm.read(typed);
        BridgeAnswer answer = SetupForm.solve(typed, bench.inputs());
        @Nullable BridgeShape shape = typed.sound() && answer instanceof BridgeShape drawn ? drawn : null;
        Parts parts = new Parts(typed, bench);
        parts.put("answer", new AnswerPart(typed, shape));
        parts.always();
        if (shape != null) {
            parts.shape(shape, resting);
            other.map(Setup::inputs).ifPresent(inputs -> parts.change(shape, moment, inputs));
        }
        return new LiveBench(parts.all);
    }

    /** The page as it is opened: what is still to be measured is no problem yet. */
    static LiveBench atFirst(Typed typed, SetupMoment moment, Optional<Setup> other) {
        return of(Typed.known(typed.everything()), moment, other, true);
    }

    Content part(String name) {
        return parts.getOrDefault(name, NOTHING);
    }

    boolean has(String name) {
        return parts.containsKey(name);
    }

    boolean hasRange(String field) {
        return has("range-" + field);
    }

    private static final class Parts {
        private final Typed typed;
        private final SetupBench bench;
        private final Map<String, Content> all = new LinkedHashMap<>();

        private Parts(Typed typed, SetupBench bench) {
            this.typed = typed;
            this.bench = bench;
        }

        private void put(String name, Record part) {
            all.put(name, Templates.part(part));
        }

        private void always() {
            put("post", new PostPart(new BenchPost(bench.readings())));
            RangePart.all(typed).forEach((field, range) -> put("range-" + field, range));
        }

        private void shape(BridgeShape shape, boolean resting) {
            BenchBow bow = BenchBow.of(shape, bench);
            BenchTail tail = new BenchTail(shape, bench);
            MapPart map = MapPart.of(bow);
            put("front", FrontPart.of(shape, bow));
            put("map", map);
            put("strings", new StringsPart(shape, bow));
            put("survey", new SurveyPart(map));
            put("crowns", CrownsPart.of(shape, bench, resting));
            put("side", new SidePart(tail));
            put("load", new LoadPart(tail));
            put("millimetre", MillimetrePart.of(shape));
            put("nut", NutPart.of(shape));
        }

        private void change(BridgeShape shape, SetupMoment moment, BridgeInputs other) {
            if (Bridge.shape(other) instanceof BridgeShape saved) {
                put(
                        "change",
                        moment == SetupMoment.AFTER ? new ChangePart(saved, shape) : new ChangePart(shape, saved));
            }
        }
    }
}

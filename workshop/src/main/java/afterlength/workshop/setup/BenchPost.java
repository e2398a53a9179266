package afterlength.workshop.setup;

import afterlength.craft.setup.Plate;
import afterlength.craft.setup.PlateSurface;
import afterlength.craft.setup.PostAnswer;
import afterlength.craft.setup.PostCut;
import afterlength.craft.setup.PostErrors;
import afterlength.craft.setup.PostInputs;
import afterlength.craft.setup.PostRefused;
import afterlength.craft.units.Problem;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The post, as far as it was measured. */
record BenchPost(Map<BenchReading, Double> readings) {
    private static final String PREFIX = "post/";

    static List<BenchReading> all() {
        return Arrays.stream(BenchReading.values())
                .filter(reading -> reading.field().startsWith(PREFIX))
                .toList();
    }

    List<BenchReading> missing() {
        return all().stream().filter(reading -> !readings.containsKey(reading)).toList();
    }

    /** Empty while something is still to be measured. */
    Optional<PostAnswer> find() {
        return missing().isEmpty() ? Optional.of(PostCut.of(inputs())) : Optional.empty();
    }

    /** What cannot be, at the fields of the page. */
    List<Problem> problems() {
        return find().map(answer -> answer instanceof PostRefused refused
                        ? refused.problems().stream().map(BenchPost::atField).toList()
                        : List.<Problem>of())
                .orElse(List.of());
    }

    private static Problem atField(Problem problem) {
        return new Problem("/post" + problem.at(), problem.value(), problem.message());
    }

    private PostInputs inputs() {
        return new PostInputs(
                get(BenchReading.POST_BEHIND),
                get(BenchReading.POST_INSIDE),
                get(BenchReading.POST_DIAMETER),
                get(BenchReading.POST_RIBS),
                plate(
                        BenchReading.BELLY_HEIGHT,
                        BenchReading.BELLY_ALONG,
                        BenchReading.BELLY_ACROSS,
                        BenchReading.BELLY_THICKNESS),
                plate(
                        BenchReading.BACK_HEIGHT,
                        BenchReading.BACK_ALONG,
                        BenchReading.BACK_ACROSS,
                        BenchReading.BACK_THICKNESS),
                PostErrors.USUAL);
    }

    private Plate plate(BenchReading height, BenchReading along, BenchReading across, BenchReading thickness) {
        return new Plate(new PlateSurface.Sloped(get(height), get(along), get(across)), get(thickness));
    }

    private double get(BenchReading reading) {
        return Optional.ofNullable(readings.get(reading)).orElseThrow();
    }
}

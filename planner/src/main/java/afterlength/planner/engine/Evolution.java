package afterlength.planner.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * For work without hours, where only the end of all counts: a population of plans. A child takes a stretch of its order from one
 * parent and the rest from the other, or a stretch of its only parent is ordered by lot; then it is pushed back and forth in time
 * (docs/sources.md#valls-2008). Not for two threads at once.
 */
final class Evolution {
    /** Smaller ones grow alike before the time is up. */
    private static final int POPULATION = 300;

    /** Give up when so many shaken orders gave no plan at all. */
    private static final int MOST_SAMPLES = 50 * POPULATION;

    private final Sampling sampling;
    private final Crossing crossing;
    private final Renewal renewal;
    private final SplittableRandom random;
    private final boolean bounded;
    private final BackAndForth backAndForth;
    private final Population population;
    private final long bound;

    Evolution(Network network, SplittableRandom random) {
        this.sampling = new Sampling(network, random);
        this.crossing = new Crossing(network, random);
        this.renewal = new Renewal(network, random);
        this.random = random;
        this.bounded = !Mirror.isPossible(network);
        this.backAndForth = new BackAndForth(network);
        this.population = new Population(POPULATION, random);
        this.bound = LowerBound.of(network);
    }

    /** Goes on from these, or from shaken orders where they do not suffice. */
    List<Candidate> run(List<Candidate> from, Clockwork clockwork) {
        from.forEach(population::settle);
        for (int sample = 0; wantsMore(sample) && goesOn(clockwork); sample++) {
            improveAndSettle(sampling.shaken(from.isEmpty() && sample == 0));
        }
        while (!population.isEmpty() && goesOn(clockwork)) {
            improveAndSettle(child());
        }
        return population.all();
    }

    /** Longest distances leave an order drawn by lot few chances, so there every child has two parents. */
    private Candidate child() {
        return bounded || random.nextBoolean()
                ? crossing.child(population.parent(), population.parent())
                : renewal.child(population.parent());
    }

    /** Until the population is full, or it shows that there are not so many plans, or none. */
    private boolean wantsMore(int sample) {
        return (!population.isFull() && sample < POPULATION) || (population.isEmpty() && sample < MOST_SAMPLES);
    }

    private boolean goesOn(Clockwork clockwork) {
        return clockwork.tick() < 1 && (population.isEmpty() || population.best().cost > bound);
    }

    private void improveAndSettle(Candidate candidate) {
        if (backAndForth.improve(candidate)) {
            population.settle(candidate);
        }
    }

    /** Two or more populations that meet once. */
    static Optional<Candidate> search(Network network, Effort effort) {
        try (Teams teams = new Teams(effort.threads())) {
            List<Candidate> apart = round(teams, network, effort, 0, List.of());
            List<Candidate> met = round(teams, network, effort, effort.threads(), apart);
            return met.stream().reduce((one, other) -> other.cost < one.cost ? other : one);
        }
    }

    private static List<Candidate> round(Teams teams, Network network, Effort effort, int first, List<Candidate> from) {
        List<java.util.concurrent.Callable<List<Candidate>>> searches = new ArrayList<>();
        for (int thread = 0; thread < effort.threads(); thread++) {
            SplittableRandom random = new SplittableRandom(effort.seed() * 1000 + first + thread);
            searches.add(() -> new Evolution(network, random).run(from, new Clockwork(effort.share(0.5))));
        }
        return teams.round(searches).stream().flatMap(List::stream).toList();
    }
}

package afterlength.planner.engine;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * One chain of simulated annealing (docs/sources.md#kirkpatrick-1983): a changed plan is kept when it costs less, and now and then
 * when it costs a little more, less often as it cools.
 */
final class Annealing {
    private final Network network;
    private final Decoder decoder;
    private final GlueDays glue;
    private final int[] hot;
    private final SplittableRandom random;
    private final Moves moves;
    private final Candidate current;
    private final Candidate best;
    private final Candidate next;

    Annealing(Network network, Candidate first, SplittableRandom random) {
        this.network = network;
        this.decoder = new Decoder(network);
        this.glue = new GlueDays(network);
        this.hot = IntStream.range(0, network.size).filter(i -> network.hot[i]).toArray();
        this.random = random;
        this.moves = new Moves(network, random);
        this.current = first.copy(network);
        this.best = first.copy(network);
        this.next = first.copy(network);
        settle(current);
    }

    /** Cools from hot to cold while the effort lasts. */
    Candidate run(Clockwork clockwork, double hot, double cold) {
        if (moves.nothingToMove()) {
            return best;
        }
        for (double spent = clockwork.tick(); spent < 1; spent = clockwork.tick()) {
            step(hot * Math.pow(cold / hot, spent));
        }
        return best;
    }

    private void step(double temperature) {
        next.become(current);
        moves.change(next);
        if (random.nextInt(4) == 0) {
            moves.change(next);
        }
        if (!decoder.decode(next) || !accepts(temperature)) {
            return;
        }
        settle(next);
        current.become(next);
        if (current.cost < best.cost) {
            best.become(current);
        }
    }

    private boolean accepts(double temperature) {
        double worse = (double) next.cost - current.cost;
        return worse <= 0 || random.nextDouble() < Math.exp(-worse / temperature);
    }

    /** From now on the starts are the keys, and the pot stays cold where nothing used it, until a move says otherwise. */
    private void settle(Candidate candidate) {
        System.arraycopy(candidate.start, 0, candidate.key, 0, network.size);
        Arrays.fill(candidate.cold, true);
        for (int step : hot) {
            int day = glue.firstEndingAfter(candidate.start[step]);
            if (day < glue.count()) {
                candidate.cold[day] = false;
            }
        }
    }
}

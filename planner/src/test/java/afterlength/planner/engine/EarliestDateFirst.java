package afterlength.planner.engine;

import afterlength.planner.bench.Placed;
import afterlength.planner.bench.Plan;
import afterlength.planner.bench.Workshop;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a careful person does without a plan: all steps of the instrument promised first, then those of the next, each as soon as it can be. */
public final class EarliestDateFirst {
    private EarliestDateFirst() {}

    /** Its plan, laid out by the engine's own decoder. */
    public static Plan plan(Workshop workshop) {
        Network network = WorkshopNetwork.of(workshop, Optional.empty(), 0);
        Candidate candidate = new Candidate(network);
        for (int i = 0; i < network.size; i++) {
            candidate.key[i] = (int) network.due[network.job[i]];
        }
        new Decoder(network).decode(candidate);
        List<Placed> placed = new ArrayList<>();
        for (int i = 0; i < network.size; i++) {
            placed.add(new Placed(candidate.start[i], candidate.person[i]));
        }
        return new Plan(placed);
    }
}

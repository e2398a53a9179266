package afterlength.planner.engine;

/**
 * The same network with time running backwards: what had to start after another has to start before it. Laying it out pushes
 * everything as late as it can stand; turned round again and laid out forwards it has often become shorter
 * (forward-backward improvement, docs/sources.md#valls-2005).
 */
final class Mirror {
    private Mirror() {}

    /** Only for networks without hours, hot glue and deadlines, in which each activity is ready when its hands are free. */
    static Network of(Network network) {
        NetworkDraft draft = new NetworkDraft();
        draft.capacities(network.capacity);
        draft.jobs(network.due, network.weight, network.readyCost);
        for (int i = 0; i < network.size; i++) {
            int length = network.hands[i];
            NetworkDraft.Activity activity = draft.add().lasting(length, length);
            for (int k = 0; k < network.use[i].length; k++) {
                activity.using(
                        network.use[i][k],
                        network.useAmount[i][k],
                        length - network.useTo[i][k],
                        length - network.useFrom[i][k]);
            }
            for (int k = 0; k < network.out[i].length; k++) {
                int to = network.out[i][k];
                draft.arc(to, i, network.outLag[i][k] + network.hands[to] - length);
            }
        }
        return draft.build();
    }

    static boolean isPossible(Network network) {
        for (int i = 0; i < network.size; i++) {
            boolean plain = !network.hot[i] && network.persons[i] == 0 && network.begun[i] < 0;
            if (!plain || network.deadline[i] < Lane.NEVER - 1 || hasLongestDistance(network, i)) {
                return false;
            }
        }
        return true;
    }

    private static boolean hasLongestDistance(Network network, int i) {
        for (int lag : network.outLag[i]) {
            if (lag != network.hands[i]) {
                return true;
            }
        }
        return false;
    }
}

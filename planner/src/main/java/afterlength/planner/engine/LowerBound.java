package afterlength.planner.engine;

/** A makespan that nothing can beat: the longest chain of activities, or the fullest resource. For networks with a single job due at once. */
final class LowerBound {
    private LowerBound() {}

    static long of(Network network) {
        int[] tails = Tails.of(network);
        long bound = 0;
        for (int i = 0; i < network.size; i++) {
            bound = Math.max(bound, (long) network.earliest[i] + tails[i]);
        }
        long[] work = new long[network.capacity.length];
        for (int i = 0; i < network.size; i++) {
            for (int k = 0; k < network.use[i].length; k++) {
                work[network.use[i][k]] +=
                        (long) network.useAmount[i][k] * (network.useTo[i][k] - network.useFrom[i][k]);
            }
        }
        for (int resource = 0; resource < work.length; resource++) {
            if (network.capacity[resource] > 0) {
                bound = Math.max(bound, -Math.floorDiv(-work[resource], network.capacity[resource]));
            }
        }
        return bound;
    }
}

package afterlength.planner.engine;

/** The longest way from the start of each activity to the end of its job, resources aside. */
final class Tails {
    private Tails() {}

    static int[] of(Network network) {
        int[] tails = network.stay.clone();
        int[] byRank = network.byRank();
        for (int at = byRank.length - 1; at >= 0; at--) {
            int i = byRank[at];
            for (int k = 0; k < network.out[i].length; k++) {
                if (Network.orders(network.outLag[i][k])) {
                    tails[i] = Math.max(tails[i], network.outLag[i][k] + tails[network.out[i][k]]);
                }
            }
        }
        return tails;
    }
}

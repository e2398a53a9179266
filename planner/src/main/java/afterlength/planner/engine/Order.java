package afterlength.planner.engine;

/** Sorts activities by key, each after those that must begin before it. Kept between calls: a small change is a small sort. */
final class Order {
    private final Network network;
    private final int[] byRank;
    private final int[] effective;
    private final int[] order;

    Order(Network network) {
        this.network = network;
        this.byRank = network.byRank();
        this.effective = new int[network.size];
        this.order = byRank.clone();
    }

    int[] arrange(int[] key) {
        for (int activity : byRank) {
            int most = key[activity];
            int[] into = network.into[activity];
            int[] lag = network.intoLag[activity];
            for (int k = 0; k < into.length; k++) {
                if (Network.orders(lag[k])) {
                    most = Math.max(most, effective[into[k]]);
                }
            }
            effective[activity] = most;
        }
        sort();
        return order;
    }

    private void sort() {
        for (int at = 1; at < order.length; at++) {
            int activity = order[at];
            int to = at;
            while (to > 0 && after(order[to - 1], activity)) {
                order[to] = order[to - 1];
                to--;
            }
            order[to] = activity;
        }
    }

    private boolean after(int one, int other) {
        int difference = Integer.compare(effective[one], effective[other]);
        return difference > 0 || (difference == 0 && network.rank[one] > network.rank[other]);
    }
}

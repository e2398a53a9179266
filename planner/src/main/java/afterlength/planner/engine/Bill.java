package afterlength.planner.engine;

import java.util.Arrays;

/**
 * What a plan costs, in three-thousandths of an hour's lateness at weight 1, so that every part is a whole number: lateness by
 * weight, time until ready, heated half-days, days changed against the plan to keep to. Not for two threads at once.
 */
final class Bill {
    private static final int DAY = 24 * 60;

    private final Network network;
    private final GlueDays glue;
    private final int[] ready;
    private final boolean[] heated;

    Bill(Network network) {
        this.network = network;
        this.glue = new GlueDays(network);
        this.ready = new int[network.jobs()];
        this.heated = new boolean[network.glueFrom.length];
    }

    long of(int[] start) {
        Arrays.fill(ready, network.now);
        Arrays.fill(heated, false);
        long cost = 0;
        for (int i = 0; i < network.size; i++) {
            int job = network.job[i];
            ready[job] = Math.max(ready[job], start[i] + network.stay[i]);
            if (network.hot[i]) {
                cost += heat(start[i]);
            }
            if (network.kept[i] >= 0 && Math.floorDiv(start[i], DAY) != Math.floorDiv(network.kept[i], DAY)) {
                cost += network.stability;
            }
        }
        for (int job = 0; job < ready.length; job++) {
            cost += network.weight[job] * Math.max(0, ready[job] - network.due[job])
                    + network.readyCost * (ready[job] - network.now);
        }
        return cost;
    }

    private long heat(int start) {
        int day = glue.firstEndingAfter(start);
        if (day == heated.length || heated[day]) {
            return 0;
        }
        heated[day] = true;
        return network.glueCost;
    }
}

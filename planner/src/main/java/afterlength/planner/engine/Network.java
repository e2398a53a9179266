package afterlength.planner.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Work to be laid out in time, in the plainest form that still holds both a workshop and the open benchmarks of project planning:
 * activities that take hands for a while and hold resources for a stretch; distances between starts, minimal and maximal alike, as
 * arcs "start of {@code to} ≥ start of {@code from} + {@code lag}" (a negative lag bounds from above); persons with hours; half-days
 * on which glue is hot. Read only once built; arrays are indexed by activity.
 */
public final class Network {
    final int size;
    /** Minutes one person's hands are taken, from the start. */
    final int[] hands;
    /** Minutes from the start until it is ready, the wait included. */
    final int[] stay;

    final int[] earliest;
    /** Latest start. */
    final int[] deadline;

    /** Who may do it, as a bit set; 0 when it needs nobody. */
    final int[] persons;
    /** The earlier activity that the same person has to do, or -1. */
    final int[] sameAs;

    final boolean[] hot;
    final int[][] use;
    final int[][] useAmount;
    final int[][] useFrom;
    final int[][] useTo;
    final int[][] into;
    final int[][] intoLag;
    final int[][] out;
    final int[][] outLag;
    /** A place in an order in which every activity comes after those that must begin before it. */
    final int[] rank;

    final int[] capacity;
    final int[][] hoursFrom;
    final int[][] hoursTo;
    final int[] glueFrom;
    final int[] glueTo;
    final int warmUp;
    final int[] job;
    final long[] due;
    final long[] weight;
    final int now;
    /** Where it stands because it was begun, or -1. */
    final int[] begun;

    final int[] begunBy;
    /** The start it had in the plan to keep to, or -1. */
    final int[] kept;

    final long stability;
    final long glueCost;
    final long readyCost;

    Network(NetworkDraft draft) {
        List<NetworkDraft.Activity> all = draft.activities;
        size = all.size();
        hands = all.stream().mapToInt(each -> each.hands).toArray();
        stay = all.stream().mapToInt(each -> each.stay).toArray();
        earliest = all.stream().mapToInt(each -> each.earliest).toArray();
        deadline = all.stream().mapToInt(each -> each.deadline).toArray();
        persons = all.stream().mapToInt(each -> each.persons).toArray();
        sameAs = all.stream().mapToInt(each -> each.sameAs).toArray();
        job = all.stream().mapToInt(each -> each.job).toArray();
        begun = all.stream().mapToInt(each -> each.begun).toArray();
        begunBy = all.stream().mapToInt(each -> each.begunBy).toArray();
        kept = all.stream().mapToInt(each -> each.kept).toArray();
        hot = new boolean[size];
        use = new int[size][];
        useAmount = new int[size][];
        useFrom = new int[size][];
        useTo = new int[size][];
        for (int i = 0; i < size; i++) {
            hot[i] = all.get(i).hot;
            List<int[]> uses = all.get(i).uses;
            use[i] = column(uses, 0);
            useAmount[i] = column(uses, 1);
            useFrom[i] = column(uses, 2);
            useTo[i] = column(uses, 3);
        }
        List<List<int[]>> in = listOfLists(size);
        List<List<int[]>> from = listOfLists(size);
        for (int[] arc : draft.arcs) {
            in.get(arc[1]).add(new int[] {arc[0], arc[2]});
            from.get(arc[0]).add(new int[] {arc[1], arc[2]});
        }
        into = columns(in, 0);
        intoLag = columns(in, 1);
        out = columns(from, 0);
        outLag = columns(from, 1);
        rank = ranks(draft.arcs, size);
        capacity = draft.capacity;
        hoursFrom = draft.hoursFrom;
        hoursTo = draft.hoursTo;
        glueFrom = draft.glueFrom;
        glueTo = draft.glueTo;
        warmUp = draft.warmUp;
        due = draft.due;
        weight = draft.weight;
        now = draft.now;
        stability = draft.stability;
        glueCost = draft.glueCost;
        readyCost = draft.readyCost;
    }

    public int size() {
        return size;
    }

    /** Whether this arc orders its two ends; others only bound a distance. */
    static boolean orders(int lag) {
        return lag > 0;
    }

    private static int[] ranks(List<int[]> arcs, int size) {
        int[] waiting = new int[size];
        arcs.stream().filter(arc -> orders(arc[2])).forEach(arc -> waiting[arc[1]]++);
        List<Integer> ready = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            if (waiting[i] == 0) {
                ready.add(i);
            }
        }
        List<List<Integer>> after = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            after.add(new ArrayList<>());
        }
        arcs.stream()
                .filter(arc -> orders(arc[2]))
                .forEach(arc -> after.get(arc[0]).add(arc[1]));
        int[] rank = new int[size];
        int next = 0;
        for (int at = 0; at < ready.size(); at++) {
            rank[ready.get(at)] = next++;
            for (int later : after.get(ready.get(at))) {
                if (--waiting[later] == 0) {
                    ready.add(later);
                }
            }
        }
        if (next < size) {
            throw new IllegalArgumentException("the activities wait for each other in a circle");
        }
        return rank;
    }

    private static List<List<int[]>> listOfLists(int size) {
        List<List<int[]>> lists = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            lists.add(new ArrayList<>());
        }
        return lists;
    }

    private static int[][] columns(List<List<int[]>> rows, int column) {
        return rows.stream().map(row -> column(row, column)).toArray(int[][]::new);
    }

    private static int[] column(List<int[]> rows, int column) {
        return rows.stream().mapToInt(row -> row[column]).toArray();
    }

    int[] byRank() {
        int[] order = new int[size];
        for (int i = 0; i < size; i++) {
            order[rank[i]] = i;
        }
        return order;
    }

    int jobs() {
        return due.length;
    }

    boolean hasNoHours() {
        return Arrays.stream(persons).allMatch(set -> set == 0);
    }
}

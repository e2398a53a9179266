package afterlength.planner.engine;

import java.util.ArrayList;
import java.util.List;

/** A network while it is put together. */
public final class NetworkDraft {
    final List<Activity> activities = new ArrayList<>();
    final List<int[]> arcs = new ArrayList<>();
    int[] capacity = {};
    int[][] hoursFrom = {};
    int[][] hoursTo = {};
    int[] glueFrom = {};
    int[] glueTo = {};
    int warmUp;
    long[] due = {0};
    long[] weight = {1};
    int now;
    long stability;
    long glueCost;
    long readyCost;

    /** One activity; the fields left alone say "nobody, nothing, any time". */
    public static final class Activity {
        int hands;
        int stay;
        int earliest;
        int deadline = Lane.NEVER - 1;
        int persons;
        int sameAs = -1;
        int job;
        int begun = -1;
        int begunBy = -1;
        int kept = -1;
        boolean hot;
        final List<int[]> uses = new ArrayList<>();

        public Activity lasting(int handsMinutes, int stayMinutes) {
            hands = handsMinutes;
            stay = stayMinutes;
            return this;
        }

        public Activity of(int itsJob, int from) {
            job = itsJob;
            earliest = from;
            return this;
        }

        /** Must start by then. */
        public Activity until(int latestStart) {
            deadline = latestStart;
            return this;
        }

        public Activity by(int personSet, int sameAsActivity) {
            persons = personSet;
            sameAs = sameAsActivity;
            return this;
        }

        public Activity withHotGlue(boolean wanted) {
            hot = wanted;
            return this;
        }

        /** Holds an amount of a resource between two minutes counted from the start. */
        public Activity using(int resource, int amount, int from, int to) {
            if (amount > 0 && to > from) {
                uses.add(new int[] {resource, amount, from, to});
            }
            return this;
        }

        public Activity begun(int start, int person) {
            begun = start;
            begunBy = person;
            return this;
        }

        public Activity kept(int start) {
            kept = start;
            return this;
        }
    }

    public Activity add() {
        Activity activity = new Activity();
        activities.add(activity);
        return activity;
    }

    /** Start of {@code to} at least {@code lag} after start of {@code from}; negative: at most so long before. */
    public NetworkDraft arc(int from, int to, int lag) {
        arcs.add(new int[] {from, to, lag});
        return this;
    }

    public NetworkDraft capacities(int[] perResource) {
        capacity = perResource.clone();
        return this;
    }

    public NetworkDraft hours(int[][] from, int[][] to) {
        hoursFrom = from;
        hoursTo = to;
        return this;
    }

    public NetworkDraft glue(int[] from, int[] to, int warmUpMinutes, long costPerHalfDay) {
        glueFrom = from;
        glueTo = to;
        warmUp = warmUpMinutes;
        glueCost = costPerHalfDay;
        return this;
    }

    /** What a job costs: its weight for each minute after its due date, and {@code ready} for each minute until it is ready. */
    public NetworkDraft jobs(long[] dueAt, long[] weightPerMinute, long ready) {
        due = dueAt;
        weight = weightPerMinute;
        readyCost = ready;
        return this;
    }

    /** Cost of each activity that changes the day it had in the plan to keep to. */
    public NetworkDraft from(int minuteNow, long costPerChangedDay) {
        now = minuteNow;
        stability = costPerChangedDay;
        return this;
    }

    public Network build() {
        return new Network(this);
    }
}

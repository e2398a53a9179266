package afterlength.planner.engine;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Small changes to a plan, each the way a person at the bench would think of it: this instrument sooner, that one later, these two
 * the other way round, this glue with those on Thursday, somebody else for this step.
 */
final class Moves {
    private static final int DAY = 24 * 60;

    private final Network network;
    private final SplittableRandom random;
    private final GlueDays glue;
    private final int[][] steps;
    private final int[] hot;
    private final int[] shared;
    private final int[] free;

    Moves(Network network, SplittableRandom random) {
        this.network = network;
        this.random = random;
        this.glue = new GlueDays(network);
        this.steps = new int[network.jobs()][];
        int[] byRank = network.byRank();
        this.free = Arrays.stream(byRank).filter(i -> network.begun[i] < 0).toArray();
        for (int job = 0; job < steps.length; job++) {
            int wanted = job;
            steps[job] =
                    Arrays.stream(free).filter(i -> network.job[i] == wanted).toArray();
        }
        this.hot = Arrays.stream(free).filter(i -> network.hot[i]).toArray();
        this.shared = Arrays.stream(free)
                .filter(i -> Integer.bitCount(network.persons[i]) > 1 && network.sameAs[i] < 0)
                .toArray();
    }

    boolean nothingToMove() {
        return free.length == 0;
    }

    void change(Candidate candidate) {
        int dice = random.nextInt(100);
        if (dice < 24) {
            shiftJob(candidate, lateJob(candidate), -1);
        } else if (dice < 36) {
            shiftJob(candidate, anyJob(), 1);
        } else if (dice < 60) {
            shiftStep(candidate);
        } else if (dice < 70) {
            swapJobs(candidate);
        } else if (dice < 78) {
            putBeside(candidate);
        } else if (dice < 84 && shared.length > 0) {
            changePerson(candidate);
        } else if (hot.length > 0) {
            changeGlue(candidate);
        } else {
            shiftStep(candidate);
        }
    }

    private int anyJob() {
        return network.job[free[random.nextInt(free.length)]];
    }

    /** A late job where there is one within three draws, or else any. */
    private int lateJob(Candidate candidate) {
        int job = anyJob();
        for (int draw = 0; draw < 3; draw++) {
            if (steps[job].length > 0 && ready(candidate, job) > network.due[job]) {
                return job;
            }
            job = anyJob();
        }
        return job;
    }

    private long ready(Candidate candidate, int job) {
        long ready = 0;
        for (int step : steps[job]) {
            ready = Math.max(ready, candidate.start[step] + network.stay[step]);
        }
        return ready;
    }

    /** From a quarter of an hour to two weeks, small ones as often as large. */
    private int stretch() {
        return (int) (15 * Math.exp(random.nextDouble() * Math.log(14.0 * DAY / 15)));
    }

    private void shiftJob(Candidate candidate, int job, int direction) {
        int[] own = steps[job];
        int from = random.nextInt(3) == 0 ? 0 : random.nextInt(own.length);
        int by = direction * stretch();
        for (int at = from; at < own.length; at++) {
            shift(candidate, own[at], by);
        }
    }

    private void shift(Candidate candidate, int step, int by) {
        candidate.key[step] += by;
        if (candidate.notBefore[step] > 0) {
            int moved = candidate.notBefore[step] + by;
            candidate.notBefore[step] = by < 0 && random.nextBoolean() ? 0 : Math.max(0, moved);
        }
    }

    private void shiftStep(Candidate candidate) {
        int step = free[random.nextInt(free.length)];
        shift(candidate, step, random.nextBoolean() ? stretch() : -stretch());
    }

    private void swapJobs(Candidate candidate) {
        int one = anyJob();
        int other = anyJob();
        int first = steps[one][random.nextInt(steps[one].length)];
        int second = steps[other][random.nextInt(steps[other].length)];
        int by = candidate.key[second] - candidate.key[first];
        shiftFrom(candidate, first, by);
        shiftFrom(candidate, second, -by);
    }

    private void shiftFrom(Candidate candidate, int step, int by) {
        boolean found = false;
        for (int each : steps[network.job[step]]) {
            found |= each == step;
            if (found) {
                shift(candidate, each, by);
            }
        }
    }

    private void putBeside(Candidate candidate) {
        int step = free[random.nextInt(free.length)];
        int other = free[random.nextInt(free.length)];
        shift(candidate, step, candidate.key[other] - candidate.key[step] + (random.nextBoolean() ? 1 : -1));
    }

    private void changePerson(Candidate candidate) {
        int step = shared[random.nextInt(shared.length)];
        int set = network.persons[step] & ~(1 << candidate.person[step]);
        for (int skip = random.nextInt(Integer.bitCount(set)); skip > 0; skip--) {
            set &= set - 1;
        }
        candidate.person[step] = Integer.numberOfTrailingZeros(set);
        if (random.nextInt(3) == 0) {
            shift(candidate, step, random.nextBoolean() ? stretch() : -stretch());
        }
    }

    private void changeGlue(Candidate candidate) {
        int step = hot[random.nextInt(hot.length)];
        int day = glue.firstEndingAfter(candidate.start[step]);
        int to = day + random.nextInt(1, 6) * (random.nextBoolean() ? 1 : -1);
        if (day == glue.count() || to < 0 || to >= glue.count()) {
            return;
        }
        switch (random.nextInt(4)) {
            case 0 -> candidate.cold[day] = true;
            case 1 -> open(candidate, to);
            case 2 -> {
                candidate.cold[day] = true;
                open(candidate, to);
            }
            default -> holdUntil(candidate, step, otherSession(candidate, day));
        }
    }

    /** Heats this half-day, and wants some glue step that lies later to be ready for it. */
    private void open(Candidate candidate, int day) {
        candidate.cold[day] = false;
        int step = hot[random.nextInt(hot.length)];
        if (candidate.start[step] > glue.from(day) && random.nextBoolean()) {
            holdUntil(candidate, step, day);
        }
    }

    private int otherSession(Candidate candidate, int day) {
        int other = glue.firstEndingAfter(candidate.start[hot[random.nextInt(hot.length)]]);
        return other == day || other == glue.count() ? day + random.nextInt(3) : other;
    }

    /** A step is wanted in a half-day; when that is sooner, what must come before it is wanted as much sooner. */
    private void holdUntil(Candidate candidate, int step, int day) {
        if (day >= glue.count()) {
            return;
        }
        int by = glue.from(day) - candidate.key[step];
        candidate.cold[day] = false;
        candidate.key[step] += by;
        candidate.notBefore[step] = by < 0 ? 0 : glue.from(day);
        for (int each : steps[network.job[step]]) {
            if (each == step || by >= 0) {
                return;
            }
            shift(candidate, each, by);
        }
    }
}

package afterlength.planner.reason;

import afterlength.planner.bench.Job;
import afterlength.planner.bench.Span;
import afterlength.planner.bench.Workshop;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The same workshop with something more, to be planned again. A search finds good plans, not the best: when the new one is no
 * better, that says "nothing was found", not "it would not help".
 */
public final class WhatIf {
    private WhatIf() {}

    public static Workshop oneMoreClamp(Workshop workshop, int kind) {
        List<Integer> clamps = new ArrayList<>(workshop.clampCapacity());
        clamps.set(kind, clamps.get(kind) + 1);
        return with(workshop, workshop.personHours(), clamps, workshop.cupboardCapacity(), workshop.jobs());
    }

    public static Workshop oneMorePlaceInTheCupboard(Workshop workshop) {
        return with(
                workshop,
                workshop.personHours(),
                workshop.clampCapacity(),
                workshop.cupboardCapacity() + 1,
                workshop.jobs());
    }

    /** One person works a stretch more, such as a Saturday morning; it must not overlap the hours there are. */
    public static Workshop moreHours(Workshop workshop, int person, Span stretch) {
        List<List<Span>> hours = new ArrayList<>(workshop.personHours());
        List<Span> own = new ArrayList<>(hours.get(person));
        own.add(stretch);
        own.sort(Comparator.comparingInt(Span::from));
        hours.set(person, own);
        return with(workshop, hours, workshop.clampCapacity(), workshop.cupboardCapacity(), workshop.jobs());
    }

    private static Workshop with(
            Workshop workshop, List<List<Span>> hours, List<Integer> clamps, int cupboard, List<Job> jobs) {
        return new Workshop(
                workshop.now(),
                workshop.horizon(),
                hours,
                workshop.glueHalfDays(),
                workshop.glueWarmUp(),
                clamps,
                cupboard,
                jobs,
                workshop.steps());
    }
}

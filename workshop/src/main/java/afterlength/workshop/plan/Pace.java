package afterlength.workshop.plan;

import afterlength.workshop.work.Step;

/** Which of a step's figures are planned with. */
enum Pace {
    USUAL,
    SLOW;

    int hands_min(Step step) {
        return BenchTime.whole(this == USUAL ? step.handsTypicalMin() : step.handsHighMin());
    }

    int wait_min(Step step) {
        return BenchTime.whole(60 * (this == USUAL ? step.waitTypicalH() : step.waitHighH()));
    }
}

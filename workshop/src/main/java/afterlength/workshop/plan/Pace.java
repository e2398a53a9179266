package afterlength.workshop.plan;

import afterlength.workshop.work.Step;

/** Which of a step's figures are planned with. */
enum Pace {
    QUICK,
    USUAL,
    SLOW;

    int hands_min(Step step) {
        return BenchTime.whole(
                switch (this) {
                    case QUICK -> step.handsLowMin();
                    case USUAL -> step.handsTypicalMin();
                    case SLOW -> step.handsHighMin();
                });
    }

    int wait_min(Step step) {
        return BenchTime.whole(60
                * switch (this) {
                    case QUICK -> step.waitLowH();
                    case USUAL -> step.waitTypicalH();
                    case SLOW -> step.waitHighH();
                });
    }
}

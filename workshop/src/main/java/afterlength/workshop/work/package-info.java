/**
 * Steps, today, timers, diary, materials: what hands do with what was agreed. Whether a step is begun, drying or finished is never
 * kept; it is told anew from the diary each time. Laying all steps over working hours is the
 * business of {@code plan}, which is asked through {@link afterlength.workshop.work.BenchAhead}.
 */
@NullMarked
package afterlength.workshop.work;

import org.jspecify.annotations.NullMarked;

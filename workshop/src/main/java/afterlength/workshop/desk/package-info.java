/**
 * The desk, where pages are put together: web plumbing, layout, words, and the drawings that stand on pages. Knows no stage of
 * the job.
 */
@NullMarked
package afterlength.workshop.desk;

import org.jspecify.annotations.NullMarked;

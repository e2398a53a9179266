/**
 * Advice on a finding, beside the stages: rules kept as data say which facts speak for or against a treatment, each with its reason
 * and source. The restorer decides; decision and reason are kept as history. Nothing here proposes, prices or changes anything.
 */
@NullMarked
package afterlength.workshop.advice;

import org.jspecify.annotations.NullMarked;

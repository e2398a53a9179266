/**
 * What was seen: photographs, findings, measures, and the condition report made from them. Nothing written here is overwritten;
 * a correction is a new entry that names the one it replaces. What is to be done about a finding is the next stage's question.
 */
@NullMarked
package afterlength.workshop.examination;

import org.jspecify.annotations.NullMarked;

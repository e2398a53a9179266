/**
 * The bench plan: all steps of all visits laid over the shop's hours. What the shop knows is handed to the module {@code planner} as a
 * bench, what comes back is judged by its checker before anybody sees it. Steps and their standing are told by {@code work}; they
 * are never changed here.
 */
@NullMarked
package afterlength.workshop.plan;

import org.jspecify.annotations.NullMarked;

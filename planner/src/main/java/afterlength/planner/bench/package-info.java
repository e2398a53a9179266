/** The workshop as the planner sees it and the plan that comes out, in minutes from a Monday 00:00. Records only; engine, checker and reasons share nothing else. */
@NullMarked
package afterlength.planner.bench;

import org.jspecify.annotations.NullMarked;

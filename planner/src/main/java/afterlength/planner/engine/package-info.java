/** Finds plans: lays work out in time, varies it, keeps what costs less. It knows no page, no database and no date. */
@NullMarked
package afterlength.planner.engine;

import org.jspecify.annotations.NullMarked;

/** Why a step cannot be earlier, and what would change if the shop had more of something. */
@NullMarked
package afterlength.planner.reason;

import org.jspecify.annotations.NullMarked;

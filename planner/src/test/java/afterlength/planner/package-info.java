/** What several tests of the planner read: the instances kept in the test resources. */
@NullMarked
package afterlength.planner;

import org.jspecify.annotations.NullMarked;

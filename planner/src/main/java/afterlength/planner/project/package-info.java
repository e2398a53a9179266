/** Projects of the open benchmarks, which are planned through the same engine to show what it is worth. */
@NullMarked
package afterlength.planner.project;

import org.jspecify.annotations.NullMarked;

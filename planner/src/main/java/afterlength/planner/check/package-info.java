/** Judges a plan by the rules of the workshop alone. Nothing of the engine is named here, so that a fault of the engine cannot hide. */
@NullMarked
package afterlength.planner.check;

import org.jspecify.annotations.NullMarked;

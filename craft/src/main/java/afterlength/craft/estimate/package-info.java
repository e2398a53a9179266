/**
 * How long handwork may take, as a range. Time of hands only: glue that dries and varnish that hardens are no work and are not
 * counted here; prices are made from the minutes by the workshop's own rules, in whole minor units.
 */
@NullMarked
package afterlength.craft.estimate;

import org.jspecify.annotations.NullMarked;

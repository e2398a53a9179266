/**
 * What could be done, what it costs, what the owner chose. A treatment answers findings; scopes gather treatments for the owner to
 * choose from, with what stays as it is; an agreement keeps the choice and is never overwritten. Steps are made by the stage
 * after this one, which is told through {@link afterlength.workshop.agreement.AfterAgreement}.
 */
@NullMarked
package afterlength.workshop.agreement;

import org.jspecify.annotations.NullMarked;

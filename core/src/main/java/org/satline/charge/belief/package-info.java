/**
 * What is believed of charge and faults together from all readings, and what each choice is expected to cost.
 *
 * <p>Read {@link org.satline.charge.belief.Weighed} first.
 *
 * <p>Stable from the first release on.
 */
@NullMarked
package org.satline.charge.belief;

import org.jspecify.annotations.NullMarked;

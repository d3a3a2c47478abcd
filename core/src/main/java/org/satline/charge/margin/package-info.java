/**
 * Superheat and subcooling with their uncertainty. Read {@link org.satline.charge.margin.Margins} first.
 *
 * <p>Stable from the first release on.
 */
@NullMarked
package org.satline.charge.margin;

import org.jspecify.annotations.NullMarked;

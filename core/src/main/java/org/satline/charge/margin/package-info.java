/**
 * Superheat and subcooling with their uncertainty, and the published limits of both. Read {@link org.satline.charge.margin.Margins} first.
 */
@NullMarked
package org.satline.charge.margin;

import org.jspecify.annotations.NullMarked;

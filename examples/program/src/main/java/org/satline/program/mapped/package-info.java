/**
 * Air conditioners for proof alone, of another build than those of {@code org.satline.simulation}: compressor by a polynomial map, coils by
 * bypass factor and flooded share, valve by its balance of forces, capillary by a power law, constant slip. Nothing here is used where a
 * charge is judged, and nothing of charge or step is used here, so that what is found on these machines says something about others than
 * those on which the verdict was fitted.
 */
@NullMarked
package org.satline.program.mapped;

import org.jspecify.annotations.NullMarked;

package org.satline.visit;

import org.satline.quantity.Length;
import org.satline.quantity.Parts;
import org.satline.step.CopperTube;

/**
 * The two lines between the units, as built. Immutable, thread-safe.
 *
 * @param liquidLine the tube of the liquid line
 * @param suctionLine the tube of the suction line
 * @param covered the length that the charge on the plate covers
 * @param actual the length as built, from covered to 300 m
 */
public record LineSet(CopperTube liquidLine, CopperTube suctionLine, Length covered, Length actual) {
    private static final double LONGEST_M = 300;

    /** {@inheritDoc} */
    public LineSet {
        Parts.required("covered actual", covered, actual);
        Parts.required("liquidLine suctionLine", liquidLine, suctionLine);
        if (!(covered.metres() >= 0 && actual.metres() >= covered.metres() && actual.metres() <= LONGEST_M)) {
            throw new IllegalArgumentException(
                    "line set of " + actual + " with " + covered
                            + " covered: the length must lie in [covered, 300] m and covered not below 0 m; for a shorter line see the maker's table");
        }
    }
}

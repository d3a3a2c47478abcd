package org.satline.equilibrium;

import java.util.List;
import java.util.Set;
import org.satline.equation.MixtureEquation;
import org.satline.equation.PairInteraction;
import org.satline.equation.PairStatus;

/**
 * Substances whose liquids do not mix, whatever a mixture model without parameters for them says: water or ammonia with halocarbons or
 * hydrocarbons (common knowledge, no source). Where a pair has parameters the model decides by itself whether a second liquid forms.
 */
final class Miscibility {
    private static final Set<String> APART = Set.of("R-717", "R-718");
    /** Neither halocarbons nor hydrocarbons. */
    private static final Set<String> OTHERS = Set.of("R-717", "R-718", "R-728", "R-744", "R-764", "R-E170");

    private Miscibility() {}

    static void check(MixtureEquation mixture) {
        for (PairInteraction pair : mixture.pairs()) {
            boolean firstApart = APART.contains(pair.first()) && !OTHERS.contains(pair.second());
            boolean secondApart = APART.contains(pair.second()) && !OTHERS.contains(pair.first());
            if (pair.status() == PairStatus.DEFAULTED && (firstApart || secondApart)) {
                throw TwoLiquidsException.of(
                        List.of(firstApart ? pair.first() : pair.second()),
                        List.of(firstApart ? pair.second() : pair.first()));
            }
        }
    }
}

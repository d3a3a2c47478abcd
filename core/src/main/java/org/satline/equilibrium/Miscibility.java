package org.satline.equilibrium;

import java.util.List;
import java.util.Set;
import org.satline.refrigerant.Refrigerant;

/**
 * Substances whose liquids do not mix, whatever a mixture model without parameters for them says: water, ammonia or nitrogen with halocarbons or
 * hydrocarbons (common knowledge, no source).
 */
final class Miscibility {
    private static final Set<String> APART = Set.of("R-717", "R-718", "R-728");
    /** Neither halocarbons nor hydrocarbons. */
    private static final Set<String> OTHERS = Set.of("R-717", "R-718", "R-728", "R-744", "R-764", "R-E170");

    private Miscibility() {}

    static void check(Refrigerant refrigerant) {
        List<String> names = refrigerant.composition().components().stream()
                .map(c -> c.substance().designation())
                .toList();
        List<String> apart = names.stream().filter(APART::contains).toList();
        List<String> carbons = names.stream().filter(n -> !OTHERS.contains(n)).toList();
        if (!apart.isEmpty() && !carbons.isEmpty()) {
            throw TwoLiquidsException.of(apart, carbons);
        }
    }
}

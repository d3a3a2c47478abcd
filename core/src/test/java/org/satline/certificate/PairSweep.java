package org.satline.certificate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.satline.equation.EquationLibrary;
import org.satline.equation.InteractionModel;
import org.satline.equation.PairStatus;
import org.satline.equilibrium.ConvergenceException;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.TwoLiquidsException;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Composition;
import org.satline.refrigerant.Refrigerant;

/** Every two substances whose interaction has parameters, in five proportions: traced, or refused and why. */
final class PairSweep {
    private static final double[] FRACTIONS = {0.02, 0.1, 0.3, 0.5, 0.9};

    private final Map<String, Integer> twoLiquids = new TreeMap<>();
    private final List<String> without = new ArrayList<>();
    private int asked;
    private int refused;

    static List<String> report() {
        PairSweep sweep = new PairSweep();
        List<Refrigerant> substances = Catalogue.standard().substances().stream()
                .filter(r -> EquationLibrary.standard().hasEquation(r.designation()))
                .toList();
        int pairs = 0;
        for (int i = 0; i < substances.size(); i++) {
            for (int j = i + 1; j < substances.size(); j++) {
                if (hasParameters(substances.get(i), substances.get(j))) {
                    pairs++;
                    sweep.ask(substances.get(i), substances.get(j));
                }
            }
        }
        return sweep.lines(pairs);
    }

    private static boolean hasParameters(Refrigerant first, Refrigerant second) {
        return EquationLibrary.standard()
                        .mixture(
                                List.of(first.designation(), second.designation()),
                                InteractionModel.ADJUSTED_OVER_PUBLISHED)
                        .pairs()
                        .get(0)
                        .status()
                != PairStatus.DEFAULTED;
    }

    private void ask(Refrigerant first, Refrigerant second) {
        for (double x : FRACTIONS) {
            Map<Refrigerant, Double> fractions = new LinkedHashMap<>();
            fractions.put(first, x);
            fractions.put(second, 1 - x);
            asked++;
            String name = first.designation() + " + " + second.designation();
            try {
                FluidModel.of(Refrigerant.blend(name, Composition.ofMoleFractions(fractions)));
            } catch (TwoLiquidsException e) {
                refused++;
                twoLiquids.merge(name, 1, Integer::sum);
            } catch (ConvergenceException e) {
                refused++;
                without.add(String.format(Locale.ROOT, "%s (%.2f)", name, x));
            }
        }
    }

    private List<String> lines(int pairs) {
        return List.of(
                "",
                "### Pairs with parameters",
                "",
                String.format(
                        Locale.ROOT,
                        "%d pairs in 5 proportions, %d binaries: %d refused (%.1f %%). With a second liquid found"
                                + " beside the first, by number of proportions: %s. Without one, mole"
                                + " fraction of the first substance: %s; no bubble line that rises with temperature"
                                + " was found in the range of the equations.",
                        pairs,
                        asked,
                        refused,
                        100.0 * refused / asked,
                        twoLiquids,
                        without.isEmpty() ? "none" : String.join(", ", without)));
    }
}

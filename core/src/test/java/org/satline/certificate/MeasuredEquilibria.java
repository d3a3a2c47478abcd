package org.satline.certificate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.satline.equation.EquationLibrary;
import org.satline.equation.InteractionModel;
import org.satline.equilibrium.BoundaryPoint;
import org.satline.equilibrium.ConvergenceException;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.TwoLiquidsException;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Composition;
import org.satline.refrigerant.Refrigerant;
import org.satline.resource.CsvResource;

/** Bubble pressure and vapour composition of binary mixtures against measured points, pair by pair. */
final class MeasuredEquilibria {
    private final Map<String, Pair> pairs = new TreeMap<>();

    /** Sums of one pair, points that entered a fit of this project apart from the rest. */
    private static final class Pair {
        private final String status;
        private final Sums checks = new Sums();
        private final Sums adjusted = new Sums();
        private int beyond;
        private boolean refused;

        Pair(String status) {
            this.status = status;
        }
    }

    private static final class Sums {
        private int n;
        private double squaresP;
        private double worstP;
        private double squaresY;
        private double worstY;

        void add(double relativePressure, double vapour) {
            n++;
            squaresP += relativePressure * relativePressure;
            squaresY += vapour * vapour;
            worstP = Math.max(worstP, Math.abs(relativePressure));
            worstY = Math.max(worstY, Math.abs(vapour));
        }

        String text() {
            return n == 0
                    ? "| | | | | "
                    : String.format(
                            Locale.ROOT,
                            "| %d | %.2f | %.2f | %.4f | %.4f ",
                            n,
                            100 * Math.sqrt(squaresP / n),
                            100 * worstP,
                            Math.sqrt(squaresY / n),
                            worstY);
        }
    }

    static List<String> report() {
        MeasuredEquilibria all = new MeasuredEquilibria();
        CsvResource table = CsvResource.read(
                FluidModel.class,
                "measured-equilibria.csv",
                "first",
                "second",
                "temperature_K",
                "pressure_kPa",
                "x_first",
                "y_first",
                "kind",
                "source",
                "verified",
                "adjusted");
        table.rows().forEach(all::compare);
        return all.lines(table.rows().size());
    }

    private void compare(CsvResource.Row row) {
        String first = row.text("first");
        String second = row.text("second");
        Pair pair = pairs.computeIfAbsent(first + " + " + second, k -> new Pair(status(first, second)));
        double x = row.number("x_first");
        Map<Refrigerant, Double> fractions = new LinkedHashMap<>();
        fractions.put(Catalogue.standard().find(first), x);
        fractions.put(Catalogue.standard().find(second), 1 - x);
        BoundaryPoint bubble;
        try {
            FluidModel model =
                    FluidModel.of(Refrigerant.blend(first + "/" + second, Composition.ofMoleFractions(fractions)));
            bubble = model.bubbleAtTemperature(row.number("temperature_K"));
        } catch (TwoLiquidsException refused) {
            pair.refused = true;
            return;
        } catch (ConvergenceException | IllegalArgumentException beyondTheEnd) {
            pair.beyond++;
            return;
        }
        double pressure = bubble.pressurePa() / (1000 * row.number("pressure_kPa")) - 1;
        double vapour = row.isEmpty("y_first") ? 0 : bubble.incipientMoleFractions()[0] - row.number("y_first");
        (row.text("adjusted").equals("yes") ? pair.adjusted : pair.checks).add(pressure, vapour);
    }

    private static String status(String first, String second) {
        return EquationLibrary.standard()
                .mixture(List.of(first, second), InteractionModel.ADJUSTED_OVER_PUBLISHED)
                .pairs()
                .get(0)
                .status()
                .word();
    }

    private List<String> lines(int rows) {
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add("## Measured phase equilibria");
        lines.add("");
        lines.add(
                rows + " measured points of " + pairs.size()
                        + " pairs (the paper of each point by DOI in the test resource `measured-equilibria.csv`). Bubble pressure in per cent, vapour mole"
                        + " fraction, computed less measured; points that entered a fit of this project are counted apart and check nothing. Published pairs may"
                        + " have been fitted to some of the same papers by their authors. Beyond: the state lies outside the computed bubble line. Refused: liquids that do not mix are outside the scope.");
        lines.add("");
        lines.add(
                "| pair | status | n | rms p | worst p | rms y | worst y | fitted n | rms p | worst p | rms y | worst y | beyond |");
        lines.add("|---|---|---|---|---|---|---|---|---|---|---|---|---|");
        pairs.forEach((name, pair) -> lines.add("| " + name + " | " + pair.status + " " + pair.checks.text()
                + pair.adjusted.text() + "| " + (pair.refused ? "refused" : String.valueOf(pair.beyond)) + " |"));
        lines.addAll(OutstandingPairs.discussion());
        lines.addAll(OutstandingPairs.coverage());
        return lines;
    }
}

package org.satline.saturation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.satline.equation.PairInteraction;
import org.satline.equation.PairStatus;
import org.satline.equilibrium.BoundaryPoint;
import org.satline.equilibrium.ConvergenceException;
import org.satline.equilibrium.FluidModel;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Composition;
import org.satline.refrigerant.Refrigerant;
import org.satline.resource.CsvResource;

/**
 * A measured bubble pressure of two substances beside the computed one.
 *
 * @param pair the interaction
 * @param source the paper
 * @param error ln of (computed / measured pressure)
 * @param temperatureK temperature, K
 * @param moleFraction liquid mole fraction of the substance that comes first in the alphabet
 * @param weight {@code 4 |y_1 x_2 + y_2 x_1 - x_1 x_2|}, as {@link SaturationUncertainty} states it
 * @param gasDissolved whether the temperature lies above the critical temperature of one of the two
 * @param entered whether the point entered a fit of this project
 */
public record MeasuredPoint(
        PairInteraction pair,
        String source,
        double error,
        double temperatureK,
        double moleFraction,
        double weight,
        boolean gasDissolved,
        boolean entered) {
    private static final List<MeasuredPoint> ALL = read();

    /** All points that lie on a computed bubble line, in the order of the file. */
    public static List<MeasuredPoint> all() {
        return ALL;
    }

    /** Name of the pair, both substances in the order of the alphabet. */
    public String pairName() {
        return pair.first().compareTo(pair.second()) < 0
                ? pair.first() + " + " + pair.second()
                : pair.second() + " + " + pair.first();
    }

    /** One measured set: the points of one pair in one paper. */
    public String set() {
        return source + " " + pairName();
    }

    public PairStatus status() {
        return pair.status();
    }

    private static List<MeasuredPoint> read() {
        List<MeasuredPoint> points = new ArrayList<>();
        for (CsvResource.Row row : CsvResource.read(
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
                        "adjusted")
                .rows()) {
            double x = row.number("x_first");
            if (!(x > 0 && x < 1)) {
                continue;
            }
            Refrigerant first = Catalogue.standard().find(row.text("first"));
            Refrigerant second = Catalogue.standard().find(row.text("second"));
            Map<Refrigerant, Double> fractions = new LinkedHashMap<>();
            fractions.put(first, x);
            fractions.put(second, 1 - x);
            double temperature = row.number("temperature_K");
            try {
                FluidModel model = FluidModel.of(Refrigerant.blend("measured", Composition.ofMoleFractions(fractions)));
                BoundaryPoint bubble = model.bubbleAtTemperature(temperature);
                double y = bubble.incipientMoleFractions()[0];
                double critical = model.equation().mixture().components().stream()
                        .mapToDouble(c -> c.constants().criticalTemperature())
                        .min()
                        .orElseThrow();
                points.add(new MeasuredPoint(
                        model.equation().mixture().pairs().get(0),
                        row.text("source"),
                        Math.log(bubble.pressurePa() / (1000 * row.number("pressure_kPa"))),
                        temperature,
                        row.text("first").compareTo(row.text("second")) < 0 ? x : 1 - x,
                        4 * Math.abs(y * (1 - x) + (1 - y) * x - x * (1 - x)),
                        temperature > critical,
                        row.text("adjusted").equals("yes")));
            } catch (ConvergenceException | IllegalArgumentException outside) {
                // two liquids, or beyond the end of the computed line: the certificate counts them
            }
        }
        return List.copyOf(points);
    }
}

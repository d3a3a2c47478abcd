package org.satline.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.satline.equilibrium.FluidModel;
import org.satline.saturation.SaturationProperty;

/** Measures a table against the equation at random states; the same states each time, so that a certificate can be repeated. */
final class Certifier {
    private static final long SEED = 20261125;

    private final FluidModel model;
    private final TableData table;
    private final int statesPerRegion;

    Certifier(FluidModel model, TableData table, int statesPerRegion) {
        this.model = model;
        this.table = table;
        this.statesPerRegion = statesPerRegion;
    }

    List<Certificate.Entry> measure() {
        List<Certificate.Entry> entries = new ArrayList<>();
        SplittableRandom random =
                new SplittableRandom(SEED ^ table.designation().hashCode());
        LineSampler bubble = new LineSampler(model, true);
        LineSampler dew = new LineSampler(model, false);
        double end = model.twoPhaseEnd().temperatureK();
        for (Region region : Region.values()) {
            for (boolean onBubble : new boolean[] {true, false}) {
                LineSampler line = onBubble ? bubble : dew;
                double[] temperatures = states(line, region, end, random);
                for (SaturationProperty property : SaturationProperty.values()) {
                    if (property.onBubbleLine() == onBubble) {
                        measure(property, region, line, temperatures, entries);
                    }
                }
            }
        }
        return entries;
    }

    private double[] states(LineSampler line, Region region, double end, SplittableRandom random) {
        Column pressure = column(
                line.facts().equals(table.bubble())
                        ? SaturationProperty.BUBBLE_PRESSURE
                        : SaturationProperty.DEW_PRESSURE);
        double from = Math.max(pressure.low, region.from() * end);
        double to = Math.min(line.temperatures().high(), region.to() * end);
        double[] states = new double[to > from ? statesPerRegion : 0];
        for (int i = 0; i < states.length; i++) {
            states[i] = from + random.nextDouble() * (to - from);
        }
        return states;
    }

    private Column column(SaturationProperty property) {
        return Objects.requireNonNull(table.columns().get(property), property.words());
    }

    private void measure(
            SaturationProperty property,
            Region region,
            LineSampler line,
            double[] temperatures,
            List<Certificate.Entry> entries) {
        Column column = column(property);
        SaturationProperty pressure =
                property.onBubbleLine() ? SaturationProperty.BUBBLE_PRESSURE : SaturationProperty.DEW_PRESSURE;
        int states = 0;
        double worst = 0;
        double at = 0;
        for (double temperature : temperatures) {
            double x = property.askedByPressure() ? line.value(pressure, temperature) : temperature;
            if (!column.covers(x)) {
                continue;
            }
            double exact = line.value(property, x);
            double error = Math.abs(column.at(x) - exact) / (Region.relative(property) ? Math.abs(exact) : 1);
            states++;
            if (!(error <= worst)) {
                worst = error;
                at = x;
            }
        }
        if (states > 0) {
            entries.add(new Certificate.Entry(property, region, column.low, column.high, states, worst, at));
        }
    }
}

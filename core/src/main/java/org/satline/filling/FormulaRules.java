package org.satline.filling;

import java.util.List;
import java.util.Optional;
import org.satline.explanation.Figure;
import org.satline.filling.RuleOutcome.NotTested;
import org.satline.filling.RuleOutcome.Reason;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Density;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;

/** The formulas of P200(5) for gases without an entry in the table. */
final class FormulaRules {
    private static final double ATMOSPHERE_PA = Atmosphere.standard().pressure().pascals();
    private static final double ONE_BAR_PA = Pressure.ofBars(1).pascals();

    private FormulaRules() {}

    static RuleOutcome lowPressure(FillRule rule, RuleCase it, FillingRatioTable ratios) {
        if (ratios.names(it.gas())) {
            return it.no(rule, Reason.GAS_NAMED);
        }
        if (!(it.curve().bubblePressurePa(it.curve().bubbleTemperatureRange().low()) <= ATMOSPHERE_PA)) {
            return it.no(rule, Reason.NO_BOILING_POINT);
        }
        double boiling = it.curve().bubbleTemperatureK(ATMOSPHERE_PA);
        double density = it.curve().bubbleLiquidDensity(boiling);
        // the formula takes kg/L
        double ratio = (0.0032 * boiling - 0.24) * density / 1000;
        return it.limit(
                rule,
                ratio * it.waterCapacity(),
                List.of(),
                List.of(),
                Figure.of("BP", Temperature.ofKelvins(boiling)),
                Figure.of("d_l", Density.ofKilogramsPerCubicMetre(density)),
                it.capacityFigure());
    }

    static RuleOutcome highPressure(FillRule rule, RuleCase it, FillingRatioTable ratios) {
        if (ratios.names(it.gas())) {
            return it.no(rule, Reason.GAS_NAMED);
        }
        Optional<GaugePressure> test = it.stamps().testPressure();
        if (test.isEmpty()) {
            return NotTested.without(rule, Stamp.TEST_PRESSURE);
        }
        double gasDensity = it.model()
                .get()
                .stateAt(it.temperatureOf(rule).kelvins(), ONE_BAR_PA)
                .density();
        double ratio = 8.5e-4 * gasDensity * test.get().bars();
        return it.limit(
                rule,
                ratio * it.waterCapacity(),
                List.of(),
                List.of(),
                Figure.of("d_g", Density.ofKilogramsPerCubicMetre(gasDensity)),
                Figure.of("TP", test.get()),
                it.capacityFigure());
    }
}

package org.satline.cylinder;

import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import org.satline.equilibrium.FluidModel;
import org.satline.explanation.Step;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Mass;
import org.satline.quantity.Temperature;
import org.satline.safety.Caution;
import org.satline.saturation.SaturationCurve;

/** One cylinder, one refrigerant, one warmest temperature: what a rule looks at. The model is made only when asked for. */
record RuleCase(
        CylinderStamps stamps, SaturationCurve curve, Temperature maximumTemperature, Supplier<FluidModel> model) {
    private static final double LOW_PRESSURE_ABOVE_K = Temperature.ofCelsius(65).kelvins();
    private static final double COMPRESSED_BELOW_K = 223.15;
    /** The rules state gauge pressures against the standard atmosphere. */
    private static final double ATMOSPHERE_PA = Atmosphere.standard().pressure().pascals();

    double volume() {
        return stamps.volume().cubicMetres();
    }

    double waterCapacity() {
        return stamps.waterCapacity().kilograms();
    }

    String gas() {
        return curve.refrigerant().designation();
    }

    double gauge(double absolutePa) {
        return absolutePa - ATMOSPHERE_PA;
    }

    double absolute(double gaugePa) {
        return gaugePa + ATMOSPHERE_PA;
    }

    Temperature temperatureOf(FillRule rule) {
        return rule.temperature().orElse(maximumTemperature);
    }

    /** Where the bubble line ends, K. */
    double end() {
        return curve.bubbleTemperatureRange().high();
    }

    boolean hasLiquidAt(double temperatureK) {
        return temperatureK <= end();
    }

    /** Why a rule passes this gas or receptacle by; empty where it applies. */
    String whyOutOfScope(FillRule rule) {
        boolean tank = stamps.specification()
                .filter(CylinderSpecification::isPortableTank)
                .isPresent();
        double end = end();
        return switch (rule.scope()) {
            case ANY -> "";
            case TANK -> tank ? "" : "it is for portable tanks";
            case RECEPTACLE -> tank ? "it is not for portable tanks" : "";
            case LOW ->
                end > LOW_PRESSURE_ABOVE_K
                        ? ""
                        : "it is for gases of critical temperature above 65 degC; the saturation line of " + gas()
                                + " ends at " + Figures.temperature(end);
            case HIGH ->
                end <= LOW_PRESSURE_ABOVE_K && end >= COMPRESSED_BELOW_K
                        ? ""
                        : "it is for gases of critical temperature from -50 to 65 degC; the saturation line of " + gas()
                                + " ends at " + Figures.temperature(end);
            case COMPRESSED ->
                end < COMPRESSED_BELOW_K
                        ? ""
                        : "it is for gases of critical temperature below -50 degC; the saturation line of " + gas()
                                + " ends at " + Figures.temperature(end);
        };
    }

    RuleOutcome limit(FillRule rule, double kilograms, List<Caution> cautions, List<Step> steps) {
        return new RuleOutcome.MassLimit(
                rule,
                Mass.ofKilograms(kilograms),
                Mass.ofKilograms(stamps.tare().kilograms() + kilograms),
                cautions,
                steps);
    }

    Step volumeStep() {
        return new Step(
                "volume of the cylinder",
                "V = Wc / rho_w",
                String.format(
                        Locale.ROOT,
                        "V = %.4f kg / %.1f kg/m3",
                        waterCapacity(),
                        CylinderStamps.WATER_AT_60_F.kilogramsPerCubicMetre()),
                Figures.volume(volume()),
                "water at 60 degF, 62.37 lb/ft3");
    }

    Step liquidDensityStep(double temperatureK, double density) {
        return new Step(
                "density of liquid " + gas() + " at its bubble point",
                "rho_l(T)",
                "rho_l(" + Figures.temperature(temperatureK) + ")",
                Figures.density(density),
                curve.source());
    }

    /** A caution where contents that a table allows fill the cylinder with liquid below the temperature named by the rule. */
    List<Caution> liquidFullCaution(FillRule rule, double kilograms, double ruleTemperatureK) {
        double overall = kilograms / volume();
        if (!hasLiquidAt(ruleTemperatureK) || overall < curve.bubbleLiquidDensity(ruleTemperatureK)) {
            return List.of();
        }
        double fullAt = LiquidFull.temperatureK(curve, overall);
        return List.of(new Caution(
                "the printed figure of " + rule.name() + " lets the computed liquid of " + gas()
                        + " fill the cylinder at "
                        + Figures.temperature(fullAt) + ", below " + Figures.temperature(ruleTemperatureK)
                        + "; keep to the computed rule where it is stricter",
                rule.citation() + "; " + curve.source()));
    }
}

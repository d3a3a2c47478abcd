package org.satline.examples;

import java.util.Locale;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.PhaseSplit;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Catalogue;

/** How much of a liquid flashes to vapour in an expansion valve? */
public final class ThrottledLiquid {
    private ThrottledLiquid() {}

    /**
     * Prints what becomes of saturated R-134a of 20 degC that is throttled, at constant enthalpy, to 132.73 kPa.
     *
     * @param args none
     */
    public static void main(String[] args) {
        FluidModel model = FluidModel.of(Catalogue.standard().find("R-134a"));
        double enthalpy = model.bubbleAtTemperature(Temperature.ofCelsius(20).kelvins())
                .saturated()
                .specificEnthalpy(); // J/kg
        PhaseSplit after = model.states().atPressureAndEnthalpy(132_730, enthalpy);
        System.out.printf(
                Locale.ROOT,
                "%s at %.2f degC, vapour fraction %.4f%n",
                after.phases(),
                Temperature.ofKelvins(after.temperatureK()).celsius(),
                after.vapourFraction());
    }
}

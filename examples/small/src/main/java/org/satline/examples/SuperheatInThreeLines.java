package org.satline.examples;

import java.util.Locale;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** How far is the suction vapour above its dew point? */
public final class SuperheatInThreeLines {
    private SuperheatInThreeLines() {}

    /**
     * Prints the superheat of R-134a at 132.73 kPa absolute in a line of -12 degC.
     *
     * @param args none
     */
    public static void main(String[] args) {
        SaturationCurve curve = SaturationCurves.of(Catalogue.standard().find("R-134a")); // keep it
        TemperatureDifference superheat = curve.superheat(Pressure.ofKilopascals(132.73), Temperature.ofCelsius(-12));
        System.out.printf(Locale.ROOT, "superheat %.2f K%n", superheat.kelvins());
    }
}

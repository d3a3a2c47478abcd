package org.satline.examples;

import java.util.Locale;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.saturation.SaturationProperty;

/** How are many readings looked up without making an object for each? */
public final class StreamOfReadings {
    private StreamOfReadings() {}

    /**
     * Prints the mean superheat of a day of R-744 readings in SI doubles, and how many readings were refused.
     *
     * @param args none
     */
    public static void main(String[] args) {
        SaturationCurve curve = SaturationCurves.of(Catalogue.standard().find("R-744")); // made once, for all threads
        double sum = 0;
        int good = 0;
        int refused = 0;
        for (int minute = 0; minute < 1440; minute++) {
            double pressurePa = minute % 480 == 479 ? 0 : 1_969_600; // a sensor that fails three times a day
            double lineK = Temperature.ofCelsius(-15).kelvins() + (minute % 2 == 0 ? 1 : -1);
            try {
                sum += lineK - curve.dewTemperatureK(pressurePa); // with the tables: nothing allocated
                good++;
            } catch (OutOfValidityException e) { // NaN and zero end here too, never in the sum
                refused++;
            }
        }
        System.out.printf(Locale.ROOT, "mean superheat %.2f K of %d readings, %d refused%n", sum / good, good, refused);

        double[] pressuresPa = {1_969_600, 2_031_000, 2_093_800};
        double[] dewK = new double[pressuresPa.length];
        curve.values(SaturationProperty.DEW_TEMPERATURE, pressuresPa, dewK); // a whole array, all or nothing
        System.out.printf(Locale.ROOT, "dew points %.2f, %.2f and %.2f K%n", dewK[0], dewK[1], dewK[2]);
    }
}

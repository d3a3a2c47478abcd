package org.satline.examples;

import java.util.Locale;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Pressure;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** At which temperatures does a blend begin and end to boil, and how far apart are they? */
public final class BlendGlide {
    private BlendGlide() {}

    /**
     * Prints bubble point, dew point and glide of R-407C at 101.325 kPa.
     *
     * @param args none
     */
    public static void main(String[] args) {
        SaturationCurve curve = SaturationCurves.of(Catalogue.standard().find("R-407C"));
        Pressure pressure = Atmosphere.standard().pressure();
        System.out.printf(
                Locale.ROOT,
                "bubble point %.1f degC, dew point %.1f degC, glide %.1f K%n",
                curve.bubbleTemperature(pressure).celsius(),
                curve.dewTemperature(pressure).celsius(),
                curve.glide(pressure).kelvins());
    }
}

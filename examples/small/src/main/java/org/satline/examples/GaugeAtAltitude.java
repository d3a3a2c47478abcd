package org.satline.examples;

import java.util.Locale;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Length;
import org.satline.quantity.Pressure;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** What does the same gauge reading mean at sea level and on a mountain? */
public final class GaugeAtAltitude {
    private GaugeAtAltitude() {}

    /**
     * Prints absolute pressure and dew point of R-22 behind a gauge that shows 60 psig at two altitudes.
     *
     * @param args none
     */
    public static void main(String[] args) {
        SaturationCurve curve = SaturationCurves.of(Catalogue.standard().find("R-22"));
        for (Length altitude : new Length[] {Length.ofMetres(0), Length.ofMetres(1500)}) {
            Pressure pressure = Pressure.parse("60 psig", Atmosphere.atAltitude(altitude));
            System.out.printf(
                    Locale.ROOT,
                    "60 psig at %4.0f m: %.1f kPa absolute, dew point %.1f degC%n",
                    altitude.metres(),
                    pressure.kilopascals(),
                    curve.dewTemperature(pressure).celsius());
        }
    }
}

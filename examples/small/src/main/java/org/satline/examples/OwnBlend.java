package org.satline.examples;

import java.util.Locale;
import java.util.Map;
import org.satline.equilibrium.FluidModel;
import org.satline.quantity.Atmosphere;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Composition;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** How does a blend behave that stands on no list? */
public final class OwnBlend {
    private OwnBlend() {}

    /**
     * Prints the bubble point of a mixture of equal masses of, and what is known about its pair.
     *
     * @param args none
     */
    public static void main(String[] args) {
        Catalogue catalogue = Catalogue.standard();
        Refrigerant blend = Refrigerant.blend(
                "what is in drum 7",
                Composition.ofMassFractions(Map.of(catalogue.find("R-32"), 0.5, catalogue.find("R-125"), 0.5)));
        SaturationCurve curve = SaturationCurves.of(blend);
        System.out.printf(
                Locale.ROOT,
                "%s: bubble point %.1f degC at 101.325 kPa%n",
                blend.designation(),
                curve.bubbleTemperature(Atmosphere.standard().pressure()).celsius());
        FluidModel.of(blend).equation().mixture().pairs().forEach(pair -> System.out.println("pair " + pair.status()));
    }
}

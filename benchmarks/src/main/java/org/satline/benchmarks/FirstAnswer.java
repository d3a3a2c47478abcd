package org.satline.benchmarks;

import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurves;

/** Asks for one bubble pressure and ends. */
public final class FirstAnswer {
    private FirstAnswer() {}

    /**
     * Asks for one answer.
     *
     * @param arguments none
     */
    public static void main(String[] arguments) {
        double pressurePa =
                SaturationCurves.of(Catalogue.standard().find("R-410A")).bubblePressurePa(280);
        if (!(pressurePa > 0)) {
            throw new IllegalStateException("no answer");
        }
    }
}

package org.satline.examples;

import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Pressure;
import org.satline.quantity.QuantityFormatException;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.UnknownRefrigerantException;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** What comes back when a question has no answer? An exception with its parts, never NaN and never an extrapolated number. */
public final class CatchingErrors {
    private CatchingErrors() {}

    /**
     * Prints the parts of three exceptions, as a program would use them. All of them are IllegalArgumentExceptions, whose message a person
     * can read.
     *
     * @param args none
     */
    public static void main(String[] args) {
        SaturationCurve curve = SaturationCurves.of(Catalogue.standard().find("R-744"));
        try {
            System.out.println(curve.dewPressure(Temperature.ofCelsius(40)));
        } catch (OutOfValidityException e) { // above the critical temperature there is no dew point
            System.out.println(e.what() + " at most " + e.high() + " " + e.unit());
        }
        try {
            System.out.println(Pressure.parse("68 psig"));
        } catch (QuantityFormatException e) { // a gauge pressure needs an atmosphere
            System.out.println("\"" + e.text() + "\" is no " + e.quantity());
        }
        try {
            System.out.println(Catalogue.standard().find("R-134b"));
        } catch (UnknownRefrigerantException e) {
            System.out.println("did you mean " + e.suggestions().get(0) + "?");
        }
    }
}

package org.satline.examples;

import org.satline.charge.margin.Margins;
import org.satline.json.SatlineJson;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurves;

/** How does a result become JSON and come back equal? */
public final class JsonRoundTrip {
    private JsonRoundTrip() {}

    /**
     * Prints the superheat of R-744 at 1969.6 kPa in a line of -15 degC with its uncertainty and derivation as JSON, and whether what is
     * read back is equal.
     *
     * @param args none
     */
    public static void main(String[] args) {
        Margins margins = Margins.of(
                SaturationCurves.of(Catalogue.standard().find("R-744")),
                SystemReadings.builder()
                        .put(Place.SUCTION_PRESSURE, Reading.exact(Pressure.ofKilopascals(1969.6)))
                        .put(Place.SUCTION_LINE, Reading.of(Temperature.ofCelsius(-15), 0.5, "probe"))
                        .build());
        SatlineJson json = new SatlineJson(); // or SatlineModule, for an ObjectMapper of your own
        String text = json.write(margins);
        System.out.println(text);
        System.out.println("equal: " + json.read(text, Margins.class).equals(margins));
    }
}

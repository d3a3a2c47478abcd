package org.satline.visit;

import java.util.List;
import org.satline.explanation.Step;
import org.satline.measurement.Place;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;

/**
 * A pressure of the running system with the saturation temperatures at it. Immutable, thread-safe.
 *
 * @param place which one
 * @param gauge above the local atmosphere
 * @param absolute the absolute pressure
 * @param bubble bubble-point temperature at it
 * @param dew dew-point temperature at it
 * @param glide dew point less bubble point; 0 for a pure substance
 * @param steps the derivation
 */
public record PressureReadout(
        Place place,
        GaugePressure gauge,
        Pressure absolute,
        Temperature bubble,
        Temperature dew,
        TemperatureDifference glide,
        List<Step> steps) {
    /** {@inheritDoc} */
    public PressureReadout {
        Parts.required("place gauge absolute bubble dew glide", place, gauge, absolute, bubble, dew, glide);
        steps = Parts.list("steps", steps);
    }
}

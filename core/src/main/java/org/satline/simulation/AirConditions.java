package org.satline.simulation;

import java.util.Objects;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Parts;
import org.satline.quantity.Temperature;

/**
 * Air at both coils. Immutable, thread-safe.
 *
 * @param outdoor air entering the condenser, dry bulb; [0, 55] degC
 * @param returnDryBulb return air entering the evaporator, dry bulb; [15, 40] degC
 * @param returnWetBulb its wet bulb; [5 degC, dry bulb]
 */
public record AirConditions(Temperature outdoor, Temperature returnDryBulb, Temperature returnWetBulb) {
    /**
     * {@inheritDoc}
     *
     * @throws OutOfValidityException outside these ranges
     */
    public AirConditions {
        Parts.required("outdoor returnDryBulb returnWetBulb", outdoor, returnDryBulb, returnWetBulb);
        within("outdoor air", outdoor, 0, 55);
        within("return dry bulb", returnDryBulb, 15, 40);
        within("return wet bulb", returnWetBulb, 5, returnDryBulb.celsius());
    }

    /**
     * Returns the rating point of air conditioners: 95 degF outdoors, 80 degF dry bulb and 67 degF wet bulb indoors (AHRI 210/240, A test).
     *
     * @return 35.0, 26.7 and 19.4 degC
     */
    public static AirConditions rated() {
        return new AirConditions(
                Temperature.ofFahrenheit(95), Temperature.ofFahrenheit(80), Temperature.ofFahrenheit(67));
    }

    /**
     * Returns conditions from degrees Celsius.
     *
     * @param outdoor air entering the condenser, degC
     * @param returnDryBulb dry bulb of the return air, degC
     * @param returnWetBulb its wet bulb, degC
     * @return the conditions
     */
    public static AirConditions ofCelsius(double outdoor, double returnDryBulb, double returnWetBulb) {
        return new AirConditions(
                Temperature.ofCelsius(outdoor),
                Temperature.ofCelsius(returnDryBulb),
                Temperature.ofCelsius(returnWetBulb));
    }

    private static void within(String what, Temperature value, double low, double high) {
        Objects.requireNonNull(value, what);
        if (!(value.celsius() >= low && value.celsius() <= high)) {
            throw OutOfValidityException.of(
                    what, value.celsius(), "degC", low, high, "the simulated air conditioner", "simulate milder air");
        }
    }
}

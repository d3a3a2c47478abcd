package org.satline.duty;

import java.util.Locale;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;

/** Classes of appliance for the evacuation levels of 40 CFR 82.156. */
public enum ApplianceClass {
    /** Saturation above 355 psia at 104 degF, or critical temperature below it. */
    VERY_HIGH_PRESSURE,
    /** From 170 to 355 psia. */
    HIGH_PRESSURE,
    /** From 45 to below 170 psia. */
    MEDIUM_PRESSURE,
    /** Below 45 psia. */
    LOW_PRESSURE,
    /** Factory-charged, hermetic, 5 lb or less, compressor running. */
    SMALL_COMPRESSOR_WORKS,
    /** The same with a dead compressor. */
    SMALL_COMPRESSOR_DEAD,
    /** Air conditioner of a motor vehicle that is disposed of. */
    MOTOR_VEHICLE;

    private static final double AT_K = Temperature.ofCelsius(40).kelvins();
    private static final double LOW_BELOW_PA = Pressure.ofPsia(45).pascals();
    private static final double MEDIUM_BELOW_PA = Pressure.ofPsia(170).pascals();
    private static final double HIGH_UP_TO_PA = Pressure.ofPsia(355).pascals();

    /**
     * Returns the pressure class of a refrigerant by its bubble-point pressure at 40 degC (104 degF).
     *
     * <p>Source: definitions of 40 CFR 82.152, limits from memory.
     *
     * @param curve the saturation curve
     * @return low, medium, high or very high pressure
     */
    public static ApplianceClass of(SaturationCurve curve) {
        if (!(AT_K <= curve.bubbleTemperatureRange().high())) {
            return VERY_HIGH_PRESSURE;
        }
        double pressure = curve.bubblePressurePa(AT_K);
        if (pressure < LOW_BELOW_PA) {
            return LOW_PRESSURE;
        }
        if (pressure < MEDIUM_BELOW_PA) {
            return MEDIUM_PRESSURE;
        }
        return pressure <= HIGH_UP_TO_PA ? HIGH_PRESSURE : VERY_HIGH_PRESSURE;
    }

    String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}

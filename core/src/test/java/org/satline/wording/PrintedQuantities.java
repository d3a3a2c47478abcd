package org.satline.wording;

import java.util.function.Function;
import org.satline.quantity.Density;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Length;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.quantity.Power;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Quantity;
import org.satline.quantity.SpecificEnthalpy;
import org.satline.quantity.SpecificEntropy;
import org.satline.quantity.SpecificHeatCapacity;
import org.satline.quantity.Speed;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.quantity.Volume;
import org.satline.quantity.VolumeFlow;

/** Every quantity with its own reader. */
enum PrintedQuantities {
    DENSITY(Density::parse, "kg/m3", false),
    GAUGE_PRESSURE(GaugePressure::parse, "kPa gauge", true),
    LENGTH(Length::parse, "m", true),
    MASS(Mass::parse, "kg", false),
    MASS_DIFFERENCE(MassDifference::parse, "kg", true),
    POWER(Power::parse, "kW", false),
    PRESSURE(Pressure::parse, "kPa", false),
    PRESSURE_DIFFERENCE(PressureDifference::parse, "kPa", true),
    SPECIFIC_ENTHALPY(SpecificEnthalpy::parse, "kJ/kg", true),
    SPECIFIC_ENTROPY(SpecificEntropy::parse, "kJ/(kg K)", true),
    SPECIFIC_HEAT_CAPACITY(SpecificHeatCapacity::parse, "kJ/(kg K)", false),
    SPEED(Speed::parse, "m/s", false),
    TEMPERATURE(Temperature::parse, "K", false),
    TEMPERATURE_DIFFERENCE(TemperatureDifference::parse, "K", true),
    VOLUME(Volume::parse, "L", false),
    VOLUME_FLOW(VolumeFlow::parse, "m3/h", false);

    @SuppressWarnings("ImmutableEnumChecker") // a method reference keeps no state
    private final Function<String, ? extends Quantity<?>> reader;

    private final String unit;
    private final boolean signed;

    PrintedQuantities(Function<String, ? extends Quantity<?>> reader, String unit, boolean signed) {
        this.reader = reader;
        this.unit = unit;
        this.signed = signed;
    }

    /** A value in the unit of the kind; at least 0.1 where it has a floor, which a rounded figure must not fall under. */
    Quantity<?> of(double value) {
        return reader.apply((signed ? value : Math.max(0.1, Math.abs(value))) + " " + unit);
    }

    /** The number and unit before the bracket, read again. */
    Quantity<?> readLead(String printed) {
        return reader.apply(lead(printed));
    }

    static String lead(String printed) {
        return printed.substring(0, printed.lastIndexOf(" (" + bracket(printed)));
    }

    private static String bracket(String printed) {
        // units such as Btu/(lb degF) have brackets of their own, without a blank before them and a sign or digit
        // behind
        for (int at = printed.indexOf(" ("); at >= 0; at = printed.indexOf(" (", at + 1)) {
            if (Character.isDigit(printed.charAt(at + 2)) || printed.charAt(at + 2) == '-') {
                return printed.substring(at + 2);
            }
        }
        throw new AssertionError(printed + " has no second unit");
    }
}

package org.satline.wording;

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
import org.satline.quantity.UnitSystem;
import org.satline.quantity.Volume;
import org.satline.quantity.VolumeFlow;

/**
 * The two units in which a quantity is printed side by side.
 *
 * @param trade the unit of the trade in the United States
 * @param si the SI unit
 */
record DualForm(Form trade, Form si) {
    /** Below this, in lb, a scale for refrigerant is read in ounces. */
    private static final double SMALL_POUNDS = 0.1;
    /** Below this, in psi, a difference is that of a water column. */
    private static final double SMALL_PSI = 0.1;
    /** Below this, in ft3, a volume is that of a hose. */
    private static final double SMALL_CUBIC_FEET = 0.1;
    /** Below this, in ft, a length is that of a tube's wall or bore. */
    private static final double SMALL_FEET = 1;
    /** Below this, in kPa, a vacuum is read in microns. */
    private static final double DEEP_KPA = 1;
    /** A gauge that shows 0.0 psig shows no vacuum. */
    private static final double VACUUM_PSIG = -0.05;

    private static final DualForm MASS = both(Form.of("lb", 2), Form.of("kg", 2));
    private static final DualForm SMALL_MASS = both(Form.of("oz", 2), Form.of("g", 1));
    private static final DualForm TEMPERATURE =
            both(Form.of("degF", 1), Form.of("degC", 1).differingIn("K"));
    private static final DualForm TEMPERATURE_DIFFERENCE = both(Form.of("degF", 1), Form.of("K", 1));
    private static final DualForm PRESSURE = both(Form.of("psia", 1).differingIn("psi"), Form.of("kPa", 1));
    private static final DualForm DEEP_PRESSURE = both(Form.of("micron", 0).differingIn(""), Form.of("Pa", 1));
    private static final Form GAUGE_KPA = new Form("kPa gauge", "kPa", 1, "kPa", false);
    private static final DualForm GAUGE = both(Form.of("psig", 1).differingIn("psi"), GAUGE_KPA);
    private static final DualForm VACUUM = both(new Form("inHg vacuum", "inHg vacuum", 1, "", true), GAUGE_KPA);
    private static final DualForm PRESSURE_DIFFERENCE = both(Form.of("psi", 1), Form.of("kPa", 1));
    private static final DualForm WATER_COLUMN = both(Form.of("inH2O", 2), Form.of("Pa", 0));
    private static final DualForm LENGTH = both(Form.of("ft", 1), Form.of("m", 2));
    private static final DualForm SMALL_LENGTH = both(Form.of("in", 3), Form.of("mm", 2));
    private static final DualForm VOLUME = both(Form.of("ft3", 3), Form.of("L", 2));
    private static final DualForm SMALL_VOLUME = both(Form.of("in3", 2), Form.of("mL", 1));
    private static final DualForm DENSITY = both(Form.of("lb/ft3", 3), Form.of("kg/m3", 2));
    private static final DualForm ENTHALPY = both(Form.of("Btu/lb", 2), Form.of("kJ/kg", 2));
    private static final DualForm ENTROPY = both(Form.of("Btu/(lb degF)", 4), Form.of("kJ/(kg K)", 4));
    private static final DualForm SPEED = both(Form.of("ft/s", 1), Form.of("m/s", 2));
    private static final DualForm FLOW = both(Form.of("cfm", 0), Form.of("m3/h", 0));
    private static final DualForm POWER = both(Form.of("Btu/h", 0), Form.of("kW", 2));

    private static DualForm both(Form trade, Form si) {
        return new DualForm(trade, si);
    }

    Form in(UnitSystem system) {
        return system == UnitSystem.SI ? si : trade;
    }

    /** The forms in which a value of this kind and size reads well. */
    static DualForm of(Quantity<?> quantity) {
        if (quantity instanceof Mass || quantity instanceof MassDifference) {
            return isSmall(quantity, "lb", SMALL_POUNDS) ? SMALL_MASS : MASS;
        } else if (quantity instanceof Temperature) {
            return TEMPERATURE;
        } else if (quantity instanceof TemperatureDifference) {
            return TEMPERATURE_DIFFERENCE;
        } else if (quantity instanceof Pressure) {
            return isSmall(quantity, "kPa", DEEP_KPA) ? DEEP_PRESSURE : PRESSURE;
        } else if (quantity instanceof GaugePressure) {
            return quantity.valueIn("psig") < VACUUM_PSIG ? VACUUM : GAUGE;
        } else if (quantity instanceof PressureDifference) {
            return isSmall(quantity, "psi", SMALL_PSI) ? WATER_COLUMN : PRESSURE_DIFFERENCE;
        } else if (quantity instanceof Length) {
            return isSmall(quantity, "ft", SMALL_FEET) ? SMALL_LENGTH : LENGTH;
        } else if (quantity instanceof Volume) {
            return isSmall(quantity, "ft3", SMALL_CUBIC_FEET) ? SMALL_VOLUME : VOLUME;
        }
        return ofProperty(quantity);
    }

    /** Same for a value with an uncertainty, which may reach to the other side of the atmosphere: no vacuum. */
    static DualForm ofUncertain(Quantity<?> quantity) {
        return quantity instanceof GaugePressure ? GAUGE : of(quantity);
    }

    private static DualForm ofProperty(Quantity<?> quantity) {
        if (quantity instanceof Density) {
            return DENSITY;
        } else if (quantity instanceof SpecificEnthalpy) {
            return ENTHALPY;
        } else if (quantity instanceof SpecificEntropy || quantity instanceof SpecificHeatCapacity) {
            return ENTROPY;
        } else if (quantity instanceof Speed) {
            return SPEED;
        } else if (quantity instanceof VolumeFlow) {
            return FLOW;
        } else if (quantity instanceof Power) {
            return POWER;
        }
        throw new IllegalStateException(quantity.getClass().getName() + " has no form in which it is printed");
    }

    private static boolean isSmall(Quantity<?> quantity, String unit, double limit) {
        return quantity.si() != 0 && Math.abs(quantity.valueIn(unit)) < limit;
    }
}

package org.satline.quantity;

/** The two families of units in which quantities are printed. */
public enum UnitSystem {
    /** SI units with the metric units of the trade: degC, kPa, kg, L. */
    SI,
    /** United States customary units of the trade: degF, psia, psig, lb, ft3. */
    US
}

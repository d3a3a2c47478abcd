package org.satline.quantity;

import java.util.List;

/**
 * A unit of one kind of quantity: SI value = (value - zero) * multiplier / divisor + origin. Immutable.
 *
 * <p>Multiplier and divisor stand apart so that 9500 g and 9.5 kg are the same double.
 *
 * @param symbol how we print it
 * @param zero reading of this unit at the point {@code origin}
 * @param multiplier numerator of the conversion
 * @param divisor denominator of the conversion
 * @param origin SI value at the reading {@code zero}
 * @param spellings further spellings that are accepted when reading
 */
record Unit(String symbol, double zero, double multiplier, double divisor, double origin, List<String> spellings) {

    static Unit of(String symbol, double factor, String... spellings) {
        return ratio(symbol, factor, 1, spellings);
    }

    static Unit ratio(String symbol, double multiplier, double divisor, String... spellings) {
        return new Unit(symbol, 0, multiplier, divisor, 0, List.of(spellings));
    }

    boolean isSi() {
        return zero == 0 && multiplier == 1 && divisor == 1 && origin == 0;
    }

    double toSi(double value) {
        return (value - zero) * multiplier / divisor + origin;
    }

    double fromSi(double si) {
        // + 0.0 turns a negative zero into zero
        return (si - origin) * divisor / multiplier + zero + 0.0;
    }
}

package org.satline.wording;

import org.satline.quantity.Quantity;

/**
 * How one number of a quantity is printed in one unit.
 *
 * @param unit the unit, as the quantity reads it
 * @param bracketed the unit as it is printed behind the same quantity in the other unit, where that says gauge already
 * @param decimals digits after the point
 * @param difference the unit of a difference of two such numbers; empty where that has none
 * @param falling whether a larger number is a smaller quantity, as with a vacuum
 */
record Form(String unit, String bracketed, int decimals, String difference, boolean falling) {
    static Form of(String unit, int decimals) {
        return new Form(unit, unit, decimals, unit, false);
    }

    Form differingIn(String other) {
        return new Form(unit, bracketed, decimals, other, falling);
    }

    double of(Quantity<?> quantity) {
        return quantity.valueIn(unit);
    }
}

package org.satline.cylinder;

import org.satline.refrigerant.SafetyGroup;

/** Which safety groups ask for a cylinder marked for flammable gas. */
final class Flammability {
    private Flammability() {}

    /** All but the groups without flame propagation (ISO 817, ASHRAE 34: digit 1). */
    static boolean isFlammable(SafetyGroup group) {
        return group != SafetyGroup.A1 && group != SafetyGroup.B1;
    }
}

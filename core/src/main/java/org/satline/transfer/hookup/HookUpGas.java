package org.satline.transfer.hookup;

import org.satline.quantity.Parts;
import org.satline.refrigerant.SafetyGroup;

/**
 * What a hook-up has to know of the refrigerant. Immutable, thread-safe.
 *
 * @param group the safety group; the strictest where none is published
 * @param glide whether it is a blend whose vapour differs from its liquid
 * @param carbonDioxide whether it is R-744: solid below 5.18 bar, supercritical above 31 degC
 * @param properties its saturation properties
 */
public record HookUpGas(SafetyGroup group, boolean glide, boolean carbonDioxide, GasProperties properties) {
    /** {@inheritDoc} */
    public HookUpGas {
        Parts.required("group properties", group, properties);
    }

    /**
     * Tells whether a hose may be swept to the air, or a core opened by a hose end.
     *
     * @return false for groups B and class 3; common practice, no source
     */
    public boolean mayBeVented() {
        return !group.isToxic() && group != SafetyGroup.A3;
    }
}

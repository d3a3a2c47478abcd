package org.satline.transfer.hookup;

import java.util.List;
import org.satline.quantity.Length;
import org.satline.quantity.Parts;
import org.satline.quantity.Volume;

/**
 * A hose of the hook-up. Its system end is the one towards the system, its cylinder end the other; a hose turned round has its fittings
 * exchanged ({@link HookUpState#turned()}). Immutable, thread-safe.
 *
 * @param name its name, such as {@code low-hose}, {@code high-hose}, {@code centre-hose}
 * @param systemEnd the fitting at the system end before the hose is turned
 * @param cylinderEnd the fitting at the cylinder end before the hose is turned
 * @param bore inner diameter, in (0, 50] mm
 * @param length length, in (0, 100] m
 */
public record ServiceHose(String name, EndFitting systemEnd, EndFitting cylinderEnd, Length bore, Length length) {
    /** {@inheritDoc} */
    public ServiceHose {
        Parts.required("name systemEnd cylinderEnd bore length", name, systemEnd, cylinderEnd, bore, length);
        var unused = new Hose(systemEnd, cylinderEnd, bore, length); // one owner of the ranges
    }

    /**
     * Returns the names of both ends in acts and states.
     *
     * @return the end at the system, such as {@code centre-hose.system}, then that at the cylinder
     */
    public List<String> ends() {
        return List.of(end(HoseSide.SYSTEM), end(HoseSide.CYLINDER));
    }

    String end(HoseSide side) {
        return name + "." + side;
    }

    /**
     * Returns the inner volume.
     *
     * @return area of the bore times length
     */
    public Volume volume() {
        return new Hose(systemEnd, cylinderEnd, bore, length).volume();
    }
}

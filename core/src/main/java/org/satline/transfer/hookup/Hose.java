package org.satline.transfer.hookup;

import org.satline.quantity.Length;
import org.satline.quantity.Parts;
import org.satline.quantity.Volume;

/**
 * A charging hose as it hangs now. Immutable, thread-safe.
 *
 * @param systemEnd the fitting at the system
 * @param cylinderEnd the fitting at the cylinder
 * @param bore inner diameter, in (0, 50] mm
 * @param length length, in (0, 100] m
 */
public record Hose(EndFitting systemEnd, EndFitting cylinderEnd, Length bore, Length length) {
    /** {@inheritDoc} */
    public Hose {
        Parts.required("bore length", bore, length);
        Parts.required("systemEnd cylinderEnd", systemEnd, cylinderEnd);
        if (!(bore.metres() > 0 && bore.metres() <= 0.05)) {
            throw new IllegalArgumentException("bore of the hose " + bore
                    + " is outside (0, 50] mm; give its inner diameter, 1/4 in hoses have about 4.8 mm");
        }
        if (!(length.metres() > 0 && length.metres() <= 100)) {
            throw new IllegalArgumentException(
                    "length of the hose " + length + " is outside (0, 100] m; give the length of one hose");
        }
    }

    /**
     * Returns the fitting at one end.
     *
     * @param side the end
     * @return its fitting
     */
    EndFitting end(HoseSide side) {
        return side == HoseSide.SYSTEM ? systemEnd : cylinderEnd;
    }

    /**
     * Returns the same hose with its ends exchanged.
     *
     * @return the hose turned round
     */
    public Hose turned() {
        return new Hose(/* systemEnd= */ cylinderEnd, /* cylinderEnd= */ systemEnd, bore, length);
    }

    /**
     * Returns the inner volume of the hose.
     *
     * @return area of the bore times length
     */
    public Volume volume() {
        double radius = bore.metres() / 2;
        return Volume.ofCubicMetres(Math.PI * radius * radius * length.metres());
    }
}

package org.satline.program.proof;

import java.util.Optional;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;

/** Where machines come from, drawn at random. */
interface Machines {
    /** Nothing where the drawn machine cannot be built. */
    Optional<Machine> next();

    /**
     * The same machine filled by mistake with something else; nothing where this build does not tell how it then
     * runs.
     */
    Optional<Machine> filledWithAnother(Machine machine);

    SaturationCurve curve(Refrigerant refrigerant);
}

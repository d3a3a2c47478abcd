package org.satline.charge;

import java.util.Optional;
import org.satline.charge.belief.RestEvidence;
import org.satline.measurement.SystemReadings;
import org.satline.quantity.Parts;
import org.satline.saturation.SaturationCurve;

/**
 * What a charge is judged by. Immutable, thread-safe.
 *
 * @param curve saturation curve of the refrigerant in the system
 * @param readings what was read
 * @param question metering device, target and tolerance
 * @param conditions how the system ran
 */
public record ChargeCase(
        SaturationCurve curve, SystemReadings readings, ChargeQuestion question, OperatingConditions conditions) {
    /** {@inheritDoc} */
    public ChargeCase {
        Parts.required("curve readings question conditions", curve, readings, question, conditions);
    }

    /** What the pressure at rest says, where it was read. */
    Optional<RestEvidence> rest() {
        return conditions
                .standing()
                .map(standing -> RestEvidence.of(curve, standing.pressure(), standing.temperature()));
    }
}

package org.satline.charge;

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
}

package org.satline.charge.belief;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.satline.charge.margin.Deviation;
import org.satline.charge.margin.Margins;
import org.satline.charge.margin.MeteringDevice;
import org.satline.measurement.SystemReadings;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Parts;
import org.satline.quantity.TemperatureDifference;
import org.satline.saturation.SaturationCurve;

/**
 * All readings weighed together: what is believed, what each choice is expected to cost, and what reading would
 * change it most. Immutable, thread-safe.
 *
 * @param belief what is believed of the charge and of each fault
 * @param choices each choice, the one that costs least first; none where the charge cannot be judged
 * @param wouldChange path of the field of a visit file that would change the belief most; empty where all that
 *     counts was read
 * @param explained whether some hypothesis explains the readings: false where they are unlike any system that the
 *     weighing knows
 */
public record Weighed(
        ChargeBelief belief, List<WeighedChoice> choices, Optional<String> wouldChange, boolean explained) {
    /** {@inheritDoc} */
    public Weighed {
        Parts.required("belief wouldChange", belief, wouldChange);
        choices = Parts.list("choices", choices);
    }

    /**
     * What is weighed. Immutable, thread-safe.
     *
     * @param curve saturation curve of the refrigerant in the system
     * @param readings what was read
     * @param margins superheat and subcooling of these readings
     * @param metering what meters the refrigerant
     * @param deviation the judged quantity against its target; empty where it was not read or has no target
     * @param targetBudget uncertainty that the target takes over from readings, K
     * @param tolerance half-width of the band around the target
     * @param rest what the pressure at rest says, where it was read
     * @param airflowMeasured whether the airflow over the evaporator was measured
     * @param sound what is known of this unit while nothing is wrong with it
     */
    public record Observed(
            SaturationCurve curve,
            SystemReadings readings,
            Margins margins,
            MeteringDevice metering,
            Optional<Deviation> deviation,
            UncertaintyBudget targetBudget,
            TemperatureDifference tolerance,
            Optional<RestEvidence> rest,
            boolean airflowMeasured,
            Map<Symptom, Expected> sound) {
        /** {@inheritDoc} */
        public Observed {
            Parts.required("curve readings margins metering", curve, readings, margins, metering);
            Parts.required("deviation targetBudget tolerance rest", deviation, targetBudget, tolerance, rest);
            Parts.required("sound", sound);
            sound = Map.copyOf(sound);
        }
    }

    /**
     * What a quantity of one unit is while nothing is wrong with it. Immutable, thread-safe.
     *
     * @param kelvins fault-free value, K; discharge: degC
     * @param standardUncertaintyK its standard uncertainty, K; not below 0
     */
    public record Expected(double kelvins, double standardUncertaintyK) {
        /** {@inheritDoc} */
        public Expected {
            if (!(Double.isFinite(kelvins) && standardUncertaintyK >= 0 && standardUncertaintyK < 1e6)) {
                throw new IllegalArgumentException("expected " + kelvins + " K with u = " + standardUncertaintyK
                        + " K is not usable; give finite numbers");
            }
        }
    }

    /**
     * Weighs charge error and faults jointly against all readings.
     *
     * @param it what was observed
     * @return what is believed and what each choice is expected to cost; no choices without a deviation
     */
    public static Weighed of(Observed it) {
        return Weighing.of(Objects.requireNonNull(it, "it"));
    }
}

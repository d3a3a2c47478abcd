package org.satline.simulation;

import java.util.Locale;
import java.util.Objects;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;

/**
 * What is wrong with a simulated system beside its charge. Faults can be combined. Immutable, thread-safe.
 *
 * @param condenserAirLost share of the condenser airflow lost to fouling; [0, 0.8]
 * @param evaporatorAirLost share of the evaporator airflow lost; [0, 0.8]
 * @param restriction extra pressure drop of the liquid line at rated flow; [0, 3] MPa
 * @param valveLeakage share of the pumped gas that leaks back through the compressor valves; [0, 0.6]
 * @param nonCondensable partial pressure of foreign gas in the running condenser; [0, 1] MPa
 */
public record ImposedFault(
        double condenserAirLost,
        double evaporatorAirLost,
        PressureDifference restriction,
        double valveLeakage,
        Pressure nonCondensable) {
    private static final ImposedFault NONE =
            new ImposedFault(0, 0, PressureDifference.ofPascals(0), 0, Pressure.ofPascals(0));

    /** {@inheritDoc} */
    public ImposedFault {
        within("lost condenser airflow", condenserAirLost, 0.8, "");
        within("lost evaporator airflow", evaporatorAirLost, 0.8, "");
        Objects.requireNonNull(restriction, "restriction");
        within("restriction", restriction.pascals() / 1e6, 3, " MPa");
        within("valve leakage", valveLeakage, 0.6, "");
        Objects.requireNonNull(nonCondensable, "nonCondensable");
        within("partial pressure of foreign gas", nonCondensable.pascals() / 1e6, 1, " MPa");
    }

    /**
     * Nothing is wrong.
     *
     * @return no fault
     */
    public static ImposedFault none() {
        return NONE;
    }

    /**
     * A fouled condenser.
     *
     * @param airLost share of its airflow lost; [0, 0.8]
     * @return the fault alone
     */
    public static ImposedFault condenserFouling(double airLost) {
        return new ImposedFault(airLost, 0, NONE.restriction, 0, NONE.nonCondensable);
    }

    /**
     * Too little air over the evaporator.
     *
     * @param airLost share of its airflow lost; [0, 0.8]
     * @return the fault alone
     */
    public static ImposedFault lowEvaporatorAirflow(double airLost) {
        return new ImposedFault(0, airLost, NONE.restriction, 0, NONE.nonCondensable);
    }

    /**
     * A clogged filter drier or kinked tube, between the liquid port and the metering device.
     *
     * @param dropAtRatedFlow extra pressure drop at rated flow; [0, 3] MPa
     * @return the fault alone
     */
    public static ImposedFault liquidLineRestriction(PressureDifference dropAtRatedFlow) {
        Parts.required("dropAtRatedFlow", dropAtRatedFlow);
        return new ImposedFault(0, 0, dropAtRatedFlow, 0, NONE.nonCondensable);
    }

    /**
     * Leaking compressor valves.
     *
     * @param share share of the pumped gas that leaks back; [0, 0.6]
     * @return the fault alone
     */
    public static ImposedFault compressorValveLeakage(double share) {
        return new ImposedFault(0, 0, NONE.restriction, share, NONE.nonCondensable);
    }

    /**
     * Air or another gas that does not condense.
     *
     * @param partialPressure its partial pressure in the running condenser; [0, 1] MPa
     * @return the fault alone
     */
    public static ImposedFault nonCondensableGas(Pressure partialPressure) {
        Parts.required("partialPressure", partialPressure);
        return new ImposedFault(0, 0, NONE.restriction, 0, partialPressure);
    }

    private static void within(String what, double value, double high, String unit) {
        if (!(value >= 0 && value <= high)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%s is %s%s, allowed [0, %s]%s for a simulated fault; impose a milder one",
                    what,
                    value,
                    unit,
                    high,
                    unit));
        }
    }
}

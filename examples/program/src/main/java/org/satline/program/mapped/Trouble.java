package org.satline.program.mapped;

/**
 * What is wrong with a machine beside its charge.
 *
 * @param condenserAirLost share of the condenser's airflow
 * @param evaporatorAirLost share of the evaporator's airflow
 * @param restrictionPa extra pressure drop of the liquid line at rated flow, Pa
 * @param leak share of the pumped gas that leaks back
 * @param gasPa partial pressure of foreign gas in the running condenser, Pa
 */
public record Trouble(
        double condenserAirLost, double evaporatorAirLost, double restrictionPa, double leak, double gasPa) {
    /** Nothing is wrong. */
    public static final Trouble NONE = new Trouble(0, 0, 0, 0, 0);
}

package org.satline.transfer.hookup;

import org.satline.quantity.Parts;
import org.satline.quantity.Temperature;

/**
 * Mass and pressure of refrigerant and air in one volume. Vapour has the density of saturated vapour at its own pressure, whatever its
 * temperature (some per cent too dense where superheated); liquid that of saturated liquid at its temperature; air is an ideal gas at the
 * temperature of the surroundings. Immutable, thread-safe.
 */
public final class GasLaw {
    /** Specific gas constant of dry air, J/(kg K); ISO 2533. */
    private static final double AIR = 287.05287;
    /** Nodes of the vapour density against pressure, evenly spaced. */
    private static final int NODES = 64;

    private final GasProperties properties;
    private final double ambientK;
    private final double step;
    private final double[] density = new double[NODES + 1];

    /**
     * The law of one gas.
     *
     * @param gas the refrigerant
     * @param ambient temperature of the air around
     * @param highestPa highest pressure that occurs beside saturation at the warmest, Pa
     */
    public GasLaw(HookUpGas gas, Temperature ambient, double highestPa) {
        Parts.required("gas ambient", gas, ambient);
        Parts.numbers("highestPa", highestPa);
        properties = gas.properties();
        ambientK = ambient.kelvins();
        double warm = Temperature.ofCelsius(HookUpPractice.LIQUID_FULL_CELSIUS.value())
                .kelvins();
        step = Math.max(highestPa, properties.bubblePressurePa(warm)) * 1.1 / NODES;
        for (int i = 1; i <= NODES; i++) {
            // equal steps at least: near a critical point the end of a curve may answer for several nodes
            density[i] = Math.max(properties.vapourDensity(i * step), density[i - 1] * (1 + 1e-9));
        }
    }

    /**
     * Temperature of the air around.
     *
     * @return K
     */
    public double ambientK() {
        return ambientK;
    }

    /**
     * Bubble-point pressure.
     *
     * @param kelvins temperature, K
     * @return Pa
     */
    public double saturationPa(double kelvins) {
        return properties.bubblePressurePa(kelvins);
    }

    /**
     * Density of saturated liquid.
     *
     * @param kelvins temperature, K
     * @return kg/m3
     */
    public double liquidDensity(double kelvins) {
        return properties.liquidDensity(kelvins);
    }

    /**
     * Density of vapour at a pressure.
     *
     * @param pascals pressure, Pa
     * @return kg/m3
     */
    public double vapourDensity(double pascals) {
        int i = (int) Math.max(0, Math.min(pascals / step, NODES - 1));
        return density[i] + (density[i + 1] - density[i]) * (pascals / step - i);
    }

    /** The pressure of vapour of that density; inverse of {@link #vapourDensity}. */
    private double vapourPa(double kgPerM3) {
        int low = 0;
        int high = NODES;
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (density[middle] <= kgPerM3) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return step * (low + (kgPerM3 - density[low]) / (density[low + 1] - density[low]));
    }

    /**
     * Mass of air at a pressure of its own.
     *
     * @param pascals pressure, Pa
     * @param volume size of the volume, m3
     * @return kg; none below vacuum
     */
    public double airKg(double pascals, double volume) {
        return Math.max(0, pascals) * volume / (AIR * ambientK);
    }

    /**
     * Space that air takes.
     *
     * @param airKg mass of air, kg
     * @param pascals pressure, Pa
     * @return m3
     */
    public double airVolume(double airKg, double pascals) {
        return airKg * AIR * ambientK / pascals;
    }

    /**
     * Tells whether a part of it is liquid at rest.
     *
     * @param refrigerantKg mass of refrigerant, kg
     * @param volume size of the volume, m3
     * @param kelvins temperature, K
     * @return whether
     */
    public boolean isLiquid(double refrigerantKg, double volume, double kelvins) {
        return refrigerantKg / volume > vapourDensity(saturationPa(kelvins)) * (1 + 1e-9);
    }

    /**
     * Pressure of a volume at rest.
     *
     * @param refrigerantKg mass of refrigerant, kg
     * @param airKg mass of air, kg
     * @param volume size of the volume, m3
     * @param kelvins temperature, K
     * @return absolute, Pa
     */
    public double pressure(double refrigerantKg, double airKg, double volume, double kelvins) {
        double held = refrigerantKg / volume;
        if (!isLiquid(refrigerantKg, volume, kelvins)) {
            return vapourPa(held) + airKg * AIR * ambientK / volume;
        }
        double saturation = saturationPa(kelvins);
        double vapour = vapourDensity(saturation);
        double liquidPart = (held - vapour) / Math.max(liquidDensity(kelvins) - vapour, 1e-6);
        double space = Math.max(1 - liquidPart, 1e-3) * volume;
        return saturation + airKg * AIR * ambientK / space;
    }
}

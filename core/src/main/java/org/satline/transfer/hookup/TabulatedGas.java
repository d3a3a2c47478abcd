package org.satline.transfer.hookup;

import org.satline.saturation.SaturationCurve;

/** A saturation curve read off once at even steps, straight between them: some 1e-4 of a value away from the critical point. Immutable. */
final class TabulatedGas implements GasProperties {
    private static final int STEPS = 256;

    private final double coldest;
    private final double kelvins;
    private final double pascals;
    private final double[] logPressure = new double[STEPS + 1];
    private final double[] liquid = new double[STEPS + 1];
    private final double[] vapour = new double[STEPS + 1];

    TabulatedGas(SaturationCurve curve) {
        coldest = curve.minTemperatureK();
        kelvins = (curve.maxTemperatureK() - coldest) / STEPS;
        double lowest = curve.dewPressurePa(coldest);
        pascals = curve.dewPressurePa(curve.maxTemperatureK()) / STEPS;
        for (int i = 0; i <= STEPS; i++) {
            double t = Math.min(coldest + i * kelvins, curve.maxTemperatureK());
            logPressure[i] = Math.log(curve.bubblePressurePa(t));
            liquid[i] = curve.bubbleLiquidDensity(t);
            double p = Math.min(Math.max(i * pascals, lowest), pascals * STEPS);
            double dew = i == STEPS ? curve.maxTemperatureK() : Math.max(coldest, curve.dewTemperatureK(p));
            vapour[i] = curve.dewVapourDensity(dew) * i * pascals / p;
        }
    }

    @Override
    public double vapourDensity(double pressurePa) {
        double at = Math.min(pressurePa / pascals, STEPS);
        // above the last node in proportion to the pressure, so that it goes on rising
        return between(vapour, at) * Math.max(1, pressurePa / (pascals * STEPS));
    }

    @Override
    public double liquidDensity(double temperatureK) {
        return between(liquid, (temperatureK - coldest) / kelvins);
    }

    @Override
    public double bubblePressurePa(double temperatureK) {
        return Math.exp(between(logPressure, (temperatureK - coldest) / kelvins));
    }

    private static double between(double[] values, double position) {
        double at = Math.max(0, Math.min(position, STEPS));
        int i = (int) Math.min(at, STEPS - 1);
        return values[i] + (values[i + 1] - values[i]) * (at - i);
    }
}

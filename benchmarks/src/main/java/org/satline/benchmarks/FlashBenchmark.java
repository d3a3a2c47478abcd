package org.satline.benchmarks;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.PhaseSplit;
import org.satline.equilibrium.StateFinder;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/**
 * Question: what does one state cost by each pair of quantities, beside a saturation pressure from the table? States of
 * a refrigeration cycle: pressures from 1 bar to 0.8 of the highest of the two-phase region, enthalpies from 60 kJ/kg
 * below the bubble line to 60 kJ/kg above the dew line, most of them two-phase.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class FlashBenchmark {
    private static final int INPUTS = 1024;
    private static final double MARGIN = 60e3;

    /** One substance, a blend of two and a blend of five components. */
    @Param({"R-134a", "R-410A", "R-448A"})
    public String designation = "";

    private StateFinder states =
            FluidModel.of(Catalogue.standard().find("R-134a")).states();
    private SaturationCurve curve = SaturationCurves.of(Catalogue.standard().find("R-134a"));
    private final PhaseSplit[] inputs = new PhaseSplit[INPUTS];
    private final PhaseSplit[] mixed = new PhaseSplit[INPUTS];
    private final double[] temperaturesK = new double[INPUTS];
    private int next;

    /** Draws the inputs with a fixed seed. */
    @Setup
    public void draw() {
        FluidModel model = FluidModel.of(Catalogue.standard().find(designation));
        states = model.states();
        curve = SaturationCurves.of(model.refrigerant());
        Random random = new Random(20260101);
        double highest = 0.8 * model.twoPhaseEnd().pressurePa();
        for (int i = 0; i < INPUTS; i++) {
            double pressure = Math.exp(Math.log(1e5) + Math.log(highest / 1e5) * random.nextDouble());
            double low = model.bubbleAtPressure(pressure).saturated().specificEnthalpy() - MARGIN;
            double high = model.dewAtPressure(pressure).saturated().specificEnthalpy() + MARGIN;
            inputs[i] = states.atPressureAndEnthalpy(pressure, low + (high - low) * random.nextDouble());
            mixed[i] = states.atPressureAndVapourFraction(pressure, random.nextDouble());
            temperaturesK[i] = mixed[i].temperatureK();
        }
    }

    private PhaseSplit input() {
        return inputs[next++ & (INPUTS - 1)];
    }

    private PhaseSplit mixture() {
        return mixed[next++ & (INPUTS - 1)];
    }

    /**
     * Dew pressure from the table, to compare with.
     *
     * @return pressure
     */
    @Benchmark
    public double saturationFromTheTable() {
        return curve.dewPressurePa(temperaturesK[next++ & (INPUTS - 1)]);
    }

    /**
     * State at temperature and pressure; of a pure substance, 20 K warmer, since both tell nothing on its saturation
     * line.
     *
     * @return density
     */
    @Benchmark
    public double temperaturePressure() {
        PhaseSplit s = input();
        double warmer = s.liquidMoleFractions().length == 1 ? 20 : 0;
        return states.atTemperatureAndPressure(s.temperatureK() + warmer, s.pressurePa())
                .density();
    }

    /**
     * State at pressure and enthalpy.
     *
     * @return temperature
     */
    @Benchmark
    public double pressureEnthalpy() {
        PhaseSplit s = input();
        return states.atPressureAndEnthalpy(s.pressurePa(), s.specificEnthalpy())
                .temperatureK();
    }

    /**
     * State at pressure and entropy.
     *
     * @return temperature
     */
    @Benchmark
    public double pressureEntropy() {
        PhaseSplit s = input();
        return states.atPressureAndEntropy(s.pressurePa(), s.specificEntropy()).temperatureK();
    }

    /**
     * State at pressure and density.
     *
     * @return temperature
     */
    @Benchmark
    public double pressureDensity() {
        PhaseSplit s = input();
        return states.atPressureAndDensity(s.pressurePa(), s.density()).temperatureK();
    }

    /**
     * State at temperature and density.
     *
     * @return pressure
     */
    @Benchmark
    public double temperatureDensity() {
        PhaseSplit s = input();
        return states.atTemperatureAndDensity(s.temperatureK(), s.density()).pressurePa();
    }

    /**
     * State at enthalpy and entropy.
     *
     * @return temperature
     */
    @Benchmark
    public double enthalpyEntropy() {
        PhaseSplit s = input();
        return states.atEnthalpyAndEntropy(s.specificEnthalpy(), s.specificEntropy())
                .temperatureK();
    }

    /**
     * State at internal energy and volume.
     *
     * @return temperature
     */
    @Benchmark
    public double energyVolume() {
        PhaseSplit s = input();
        return states.atEnergyAndVolume(s.specificInternalEnergy(), 1 / s.density())
                .temperatureK();
    }

    /**
     * All states at temperature and enthalpy.
     *
     * @return their number
     */
    @Benchmark
    public int temperatureEnthalpy() {
        PhaseSplit s = input();
        return states.allAtTemperatureAndEnthalpy(s.temperatureK(), s.specificEnthalpy())
                .size();
    }

    /**
     * All states at temperature and entropy.
     *
     * @return their number
     */
    @Benchmark
    public int temperatureEntropy() {
        PhaseSplit s = input();
        return states.allAtTemperatureAndEntropy(s.temperatureK(), s.specificEntropy())
                .size();
    }

    /**
     * State at pressure and vapour fraction.
     *
     * @return temperature
     */
    @Benchmark
    public double pressureVapourFraction() {
        PhaseSplit s = mixture();
        return states.atPressureAndVapourFraction(s.pressurePa(), s.vapourFraction())
                .temperatureK();
    }

    /**
     * All states at temperature and vapour fraction.
     *
     * @return their number
     */
    @Benchmark
    public int temperatureVapourFraction() {
        PhaseSplit s = mixture();
        return states.allAtTemperatureAndVapourFraction(s.temperatureK(), s.vapourFraction())
                .size();
    }
}

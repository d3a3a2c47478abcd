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
import org.satline.refrigerant.Catalogue;

/**
 * Question: what does one solved state cost at a random temperature, of a substance, a two-component and a five-component blend? Each
 * answer starts from the traced line of the prepared model, none from the answer before it.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class EquilibriumBenchmark {
    private static final int INPUTS = 1024;

    /** One substance, a blend of two and a blend of five components. */
    @Param({"R-134a", "R-410A", "R-448A"})
    public String designation = "";

    private FluidModel model = FluidModel.of(Catalogue.standard().find("R-134a"));
    private final double[] temperaturesK = new double[INPUTS];
    private final double[] warmTemperaturesK = new double[INPUTS];
    private final double[] pressuresPa = new double[INPUTS];
    private int next;

    /** Draws the inputs with a fixed seed, up to 0.97 of the end of the two-phase line. */
    @Setup
    public void draw() {
        model = FluidModel.of(Catalogue.standard().find(designation));
        Random random = new Random(20260101);
        double low = model.minTemperatureK();
        double high = 0.97 * model.twoPhaseEnd().temperatureK();
        for (int i = 0; i < INPUTS; i++) {
            temperaturesK[i] = low + (high - low) * random.nextDouble();
            pressuresPa[i] = 1e4 + 5e6 * random.nextDouble();
            warmTemperaturesK[i] = 250 + 150 * random.nextDouble();
        }
    }

    private int index() {
        return next++ & (INPUTS - 1);
    }

    /**
     * Reading the input alone.
     *
     * @return temperature
     */
    @Benchmark
    public double baseline() {
        return temperaturesK[index()];
    }

    /**
     * Bubble point at a temperature (saturation of a pure substance) with the properties of the liquid.
     *
     * @return pressure
     */
    @Benchmark
    public double bubblePoint() {
        return model.bubbleAtTemperature(temperaturesK[index()]).pressurePa();
    }

    /**
     * Dew point at a temperature with the properties of the vapour.
     *
     * @return pressure
     */
    @Benchmark
    public double dewPoint() {
        return model.dewAtTemperature(temperaturesK[index()]).pressurePa();
    }

    /**
     * One-phase state at temperature and pressure; inputs that lie between the lines cost the exact check and count too.
     *
     * @return density
     */
    @Benchmark
    public double onePhaseState() {
        int i = index();
        try {
            return model.stateAt(warmTemperaturesK[i], pressuresPa[i]).density();
        } catch (IllegalArgumentException twoPhases) {
            return 0;
        }
    }
}

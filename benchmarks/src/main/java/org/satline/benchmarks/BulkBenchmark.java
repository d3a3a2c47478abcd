package org.satline.benchmarks;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.satline.charge.ChargeJudge;
import org.satline.charge.ChargeRow;
import org.satline.charge.ChargeScreen;
import org.satline.charge.Judgement;
import org.satline.charge.ScreenedCharge;
import org.satline.charge.margin.ImplausibleReadingException;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.saturation.BulkAnswers;

/** Question: what does a row of a service cost, screened and judged? Run it with {@code -prof gc} for the bytes of a row. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class BulkBenchmark {
    /** The judge takes its time; so many rows of it. */
    private static final int JUDGED = 64;

    /** Refrigerant. */
    @Param({"R-410A", "R-407C"})
    public String designation = "R-410A";

    private ServiceRows service = new ServiceRows(designation);
    private ChargeScreen screen = ChargeScreen.of(service.curve);
    private List<ChargeRow> rows = Arrays.asList(service.rows);
    private final ChargeJudge judge = ChargeJudge.usual();

    /** Loads the table. */
    public BulkBenchmark() {}

    /** Reads the table and prepares rows. */
    @Setup
    public void prepare() {
        service = new ServiceRows(designation);
        screen = ChargeScreen.of(service.curve);
        rows = Arrays.asList(service.rows);
    }

    /** {@return superheats of an array, time for each element} */
    @Benchmark
    @OperationsPerInvocation(Inputs.COUNT)
    public BulkAnswers superheats() {
        return service.curve.superheats(service.suctionPa, service.suctionLineK);
    }

    /** {@return superheats one by one through the quantity types, time for each} */
    @Benchmark
    @OperationsPerInvocation(Inputs.COUNT)
    public double superheatsOneByOne() {
        double sum = 0;
        for (int i = 0; i < Inputs.COUNT; i++) {
            sum += service.curve
                    .superheat(Pressure.ofPascals(service.suctionPa[i]), Temperature.ofKelvins(service.suctionLineK[i]))
                    .kelvins();
        }
        return sum;
    }

    /** {@return rows screened, time for each} */
    @Benchmark
    @OperationsPerInvocation(Inputs.COUNT)
    public List<ScreenedCharge> screened() {
        return screen.screen(rows);
    }

    /** {@return levels of rows judged with every fault weighed, time for each} */
    @Benchmark
    @OperationsPerInvocation(JUDGED)
    public int judged() {
        int decided = 0;
        for (int i = 0; i < JUDGED; i++) {
            try {
                decided += judge.judge(service.rows[i].chargeCase(service.curve)) instanceof Judgement.Decided ? 1 : 0;
            } catch (ImplausibleReadingException impossible) {
                decided--;
            }
        }
        return decided;
    }
}

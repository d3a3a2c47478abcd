package org.satline.benchmarks;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.tables.TableProvider;

/** Question: how long does it take to read the table of one refrigerant in a warm virtual machine, and all tables in a new one? */
@State(Scope.Benchmark)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class LoadingBenchmark {
    /** Refrigerant of the single table. */
    @Param({"R-410A", "R-134a", "R-32", "R-407C", "R-744"})
    public String designation = "R-410A";

    /** Made by the harness. */
    public LoadingBenchmark() {}

    /** {@return the curve of one refrigerant, warm} */
    @Benchmark
    @BenchmarkMode(Mode.AverageTime)
    @Warmup(iterations = 5, time = 1)
    @Measurement(iterations = 5, time = 1)
    @Fork(3)
    public SaturationCurve one() {
        return SaturationCurves.of(Catalogue.standard().find(designation));
    }

    /** {@return the curves of all refrigerants that have a table, catalogue included, nothing of it done before} */
    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @Warmup(iterations = 0)
    @Measurement(iterations = 1)
    @Fork(7)
    public List<SaturationCurve> allCold() {
        return Catalogue.standard().all().stream()
                .map(new TableProvider()::curve)
                .flatMap(Optional::stream)
                .toList();
    }
}

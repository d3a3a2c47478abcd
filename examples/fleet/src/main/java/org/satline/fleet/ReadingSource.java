package org.satline.fleet;

import org.apache.flink.api.common.accumulators.LongCounter;
import org.apache.flink.api.common.eventtime.WatermarkStrategy;
import org.apache.flink.api.common.functions.OpenContext;
import org.apache.flink.api.common.functions.RichMapFunction;
import org.apache.flink.api.connector.source.lib.NumberSequenceSource;
import org.apache.flink.connector.file.src.FileSource;
import org.apache.flink.connector.file.src.reader.TextLineInputFormat;
import org.apache.flink.core.fs.Path;
import org.apache.flink.streaming.api.datastream.SingleOutputStreamOperator;
import org.apache.flink.streaming.api.environment.StreamExecutionEnvironment;
import org.apache.flink.streaming.api.functions.ProcessFunction;
import org.apache.flink.util.Collector;

/**
 * Where readings come from: files of lines, or the simulated fleet. Both end in the same stream, with what is no
 * reading on the side.
 */
final class ReadingSource {
    private ReadingSource() {}

    /** Reads all files of a folder. */
    static SingleOutputStreamOperator<UnitReading> files(
            StreamExecutionEnvironment env, String folder, long lastSecond) {
        FileSource<String> source = FileSource.forRecordStreamFormat(new TextLineInputFormat(), new Path(folder))
                .setSplitAssigner(OrderedFiles::new)
                .build();
        return env.fromSource(source, WatermarkStrategy.noWatermarks(), "files of readings")
                .uid("files")
                .process(new LineReader(lastSecond))
                .name("read lines")
                .uid("read-lines");
    }

    /**
     * Simulates a fleet. The numbers of the blocks come in order from one task; what they stand for is made in
     * parallel.
     */
    static SingleOutputStreamOperator<UnitReading> simulated(StreamExecutionEnvironment env, SimulatedFleet fleet) {
        return env.fromSource(
                        new NumberSequenceSource(0, fleet.blocks() - 1), WatermarkStrategy.noWatermarks(), "blocks")
                .uid("blocks")
                .setParallelism(1)
                .map(new Pace(fleet))
                .uid("pace")
                .setParallelism(1)
                .rebalance()
                .process(new BlockReader(fleet))
                .name("simulate units")
                .uid("simulate-units");
    }

    /** Counts what comes and goes; the engine adds the counts up. */
    private abstract static class Counting<T> extends ProcessFunction<T, UnitReading> {
        private static final long serialVersionUID = 1L;

        private transient LongCounter read;
        private transient LongCounter rejected;

        @Override
        public void open(OpenContext context) {
            read = new LongCounter();
            rejected = new LongCounter();
            getRuntimeContext().addAccumulator(Progress.READINGS, read);
            getRuntimeContext().addAccumulator(Progress.REJECTED, rejected);
        }

        void take(ReadingLine.Read one, Context context, Collector<UnitReading> out) {
            if (one instanceof ReadingLine.Good good) {
                read.add(1L);
                out.collect(good.reading());
            } else if (one instanceof ReadingLine.Bad bad) {
                rejected.add(1L);
                context.output(FleetJob.REJECTED, bad.rejected());
            }
        }
    }

    private static final class LineReader extends Counting<String> {
        private static final long serialVersionUID = 1L;

        private final long lastSecond;

        LineReader(long lastSecond) {
            this.lastSecond = lastSecond;
        }

        @Override
        public void processElement(String line, Context context, Collector<UnitReading> out) {
            if (!line.equals(ReadingLine.HEAD)) {
                take(ReadingLine.read(line, lastSecond), context, out);
            }
        }
    }

    /** Slows the source itself down: what waits behind a slow step would hold up the checkpoints. */
    private static final class Pace extends RichMapFunction<Long, Long> {
        private static final long serialVersionUID = 1L;

        private final SimulatedFleet fleet;

        Pace(SimulatedFleet fleet) {
            this.fleet = fleet;
        }

        @Override
        public Long map(Long block) throws InterruptedException {
            fleet.pause();
            return block;
        }
    }

    private static final class BlockReader extends Counting<Long> {
        private static final long serialVersionUID = 1L;

        private final SimulatedFleet fleet;

        BlockReader(SimulatedFleet fleet) {
            this.fleet = fleet;
        }

        @Override
        public void processElement(Long block, Context context, Collector<UnitReading> out) {
            fleet.send(block, one -> take(one, context, out));
        }
    }
}

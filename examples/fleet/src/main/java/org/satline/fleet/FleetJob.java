package org.satline.fleet;

import java.time.Duration;
import org.apache.flink.api.common.eventtime.WatermarkStrategy;
import org.apache.flink.api.common.serialization.SimpleStringEncoder;
import org.apache.flink.connector.file.sink.FileSink;
import org.apache.flink.core.fs.Path;
import org.apache.flink.streaming.api.datastream.DataStream;
import org.apache.flink.streaming.api.datastream.SingleOutputStreamOperator;
import org.apache.flink.streaming.api.environment.StreamExecutionEnvironment;
import org.apache.flink.streaming.api.functions.sink.filesystem.bucketassigners.BasePathBucketAssigner;
import org.apache.flink.streaming.api.functions.sink.filesystem.rollingpolicies.OnCheckpointRollingPolicy;
import org.apache.flink.streaming.api.windowing.assigners.TumblingEventTimeWindows;
import org.apache.flink.util.OutputTag;

/**
 * Puts the job together: readings, windows, memory of each unit, files. Each step has a name of its own, under which a
 * savepoint finds its state.
 */
public final class FleetJob {
    /** What is no reading, or came too late. */
    static final OutputTag<RejectedReading> REJECTED = new OutputTag<>("rejected") {
        private static final long serialVersionUID = 1L;
    };
    /** Readings whose window had closed. */
    private static final OutputTag<UnitReading> LATE = new OutputTag<>("late") {
        private static final long serialVersionUID = 1L;
    };
    /** Days that are over. */
    static final OutputTag<UnitDay> DAYS = new OutputTag<>("days") {
        private static final long serialVersionUID = 1L;
    };

    /** How far out of order readings may come, min. */
    public static final int LATENESS_MIN = 30;
    /** Days after which a silent unit is forgotten. */
    public static final int EXPIRY_D = 400;

    private FleetJob() {}

    /**
     * Builds the job on files of readings.
     *
     * @param env environment of the engine
     * @param folder files of readings, see {@link ReadingLine}; by name in the order of time
     * @param lastSecond latest time that a reading may have, s since 1970
     * @param out folder that receives alarms, days and rejected readings
     */
    public static void onFiles(StreamExecutionEnvironment env, String folder, long lastSecond, String out) {
        build(ReadingSource.files(env, folder, lastSecond), out);
    }

    /**
     * Builds the job on a simulated fleet.
     *
     * @param env environment of the engine
     * @param fleet the fleet
     * @param out folder that receives alarms, days and rejected readings
     */
    public static void onSimulated(StreamExecutionEnvironment env, SimulatedFleet fleet, String out) {
        build(ReadingSource.simulated(env, fleet), out);
    }

    private static void build(SingleOutputStreamOperator<UnitReading> readings, String out) {
        SingleOutputStreamOperator<SettledWindow> windows = readings.assignTimestampsAndWatermarks(
                        WatermarkStrategy.<UnitReading>forBoundedOutOfOrderness(Duration.ofMinutes(LATENESS_MIN))
                                .withTimestampAssigner((reading, before) -> reading.second * 1000))
                .uid("event-time")
                .keyBy(reading -> reading.unit)
                .window(TumblingEventTimeWindows.of(Duration.ofMinutes(WindowReadings.MINUTES)))
                .trigger(new AtEndOfWindow())
                .sideOutputLateData(LATE)
                .aggregate(new WindowStep.Gather(), new WindowStep.Judge())
                .name("settled windows")
                .uid("windows");
        SingleOutputStreamOperator<Alarm> alarms = windows.keyBy(window -> window.unit)
                .process(new WatchStep(LeakRule.usual(), EXPIRY_D))
                .name("watch units")
                .uid("watch");
        DataStream<RejectedReading> late = windows.getSideOutput(LATE)
                .map(reading -> new RejectedReading(RejectReason.TOO_LATE, ReadingLine.of(reading)))
                .uid("late");
        file(alarms.map(Alarm::line).uid("alarm-lines"), out, "alarms");
        file(alarms.getSideOutput(DAYS).map(UnitDay::line).uid("day-lines"), out, "days");
        file(
                readings.getSideOutput(REJECTED)
                        .union(late)
                        .map(RejectedReading::line)
                        .uid("rejected-lines"),
                out,
                "rejected");
    }

    /** Files of a checkpoint become visible with it, once. */
    private static void file(DataStream<String> lines, String out, String name) {
        lines.sinkTo(FileSink.forRowFormat(new Path(out, name), new SimpleStringEncoder<String>())
                        .withRollingPolicy(OnCheckpointRollingPolicy.build())
                        .withBucketAssigner(new BasePathBucketAssigner<>())
                        .build())
                .name(name)
                .uid(name);
    }
}

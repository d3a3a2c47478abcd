package org.satline.fleet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.function.Consumer;
import org.apache.flink.configuration.CheckpointingOptions;
import org.apache.flink.configuration.Configuration;
import org.apache.flink.configuration.DeploymentOptions;
import org.apache.flink.configuration.PipelineOptions;
import org.apache.flink.streaming.api.environment.StreamExecutionEnvironment;
import org.apache.flink.util.ParameterTool;

/** The commands of the fleet; {@link #USAGE} lists them. */
public final class Main {
    /** What can be asked. */
    static final String USAGE = """
            run      --out DIR [--in DIR --until SECOND] [--units 300] [--days 120] [--bursts 4] [--seed 1] [--pause MS]
                     [--parallelism N] [--checkpoint-seconds 10] [--checkpoints DIR]
                     the job: on files of readings, or else on a simulated fleet;
                     on this machine it ends with a summary page
            write    --out DIR [--units 300] [--days 120] [--bursts 4] [--seed 1]
                     the readings of a simulated fleet as files, one a day
            summary  --out DIR         the summary page of a run whose files lie in DIR
            study    [--units 2000] [--seed 2026]
                     days to detection of leaks, false alarms
            calibrate [--units 1000] [--seed 900]
                     false alarms of other limits of the leak test
            measure  [--most 10000] [--readings 600000] [--repeats 3]
                     throughput and state beside a plain loop
            responses FILE             makes responses.csv anew""";

    private Main() {}

    /**
     * Runs a command.
     *
     * @param args command and options
     * @throws Exception what the engine or the disk throws
     */
    public static void main(String[] args) throws Exception {
        Consumer<String> out = System.out::println;
        String command = args.length == 0 ? "" : args[0];
        ParameterTool options = command.equals("responses")
                ? ParameterTool.fromMap(java.util.Map.of())
                : ParameterTool.fromArgs(List.of(args)
                        .subList(Math.min(1, args.length), args.length)
                        .toArray(new String[0]));
        switch (command) {
            case "run" -> run(options, out);
            case "write" -> write(options);
            case "summary" -> SummaryPage.write(Path.of(options.getRequired("out")), out);
            case "study" -> StudyTable.print(options.getLong("seed", 2026), options.getInt("units", 2000), out);
            case "calibrate" -> Calibration.print(options.getLong("seed", 900), options.getInt("units", 1000), out);
            case "measure" ->
                Measurement.print(
                        options.getLong("most", 10_000),
                        options.getLong("readings", 600_000),
                        options.getInt("repeats", 3),
                        out);
            case "responses" -> Files.write(Path.of(args[1]), ResponseMaker.lines());
            default -> out.accept(USAGE);
        }
    }

    private static SimulatedFleet fleet(ParameterTool options) {
        return new SimulatedFleet(
                FleetPlan.usual(options.getLong("seed", 1)),
                options.getLong("units", 300),
                options.getInt("days", 120),
                options.getInt("bursts", 4),
                true,
                options.getInt("pause", 0));
    }

    private static void run(ParameterTool options, Consumer<String> out) throws Exception {
        Configuration settings = settings(options.getLong("checkpoint-seconds", 10));
        if (options.has("checkpoints")) {
            settings.set(CheckpointingOptions.CHECKPOINT_STORAGE, "filesystem");
            settings.set(CheckpointingOptions.CHECKPOINTS_DIRECTORY, options.get("checkpoints"));
        }
        StreamExecutionEnvironment env = StreamExecutionEnvironment.getExecutionEnvironment(settings);
        if (options.has("parallelism")) {
            env.setParallelism(options.getInt("parallelism"));
        }
        String to = options.getRequired("out");
        if (options.has("in")) {
            FleetJob.onFiles(env, options.get("in"), Long.parseLong(options.getRequired("until")), to);
        } else {
            FleetJob.onSimulated(env, fleet(options), to);
        }
        Progress.follow(env.executeAsync("fleet"), out);
        if (env.getConfiguration()
                .getOptional(DeploymentOptions.TARGET)
                .orElse("local")
                .equals("local")) {
            SummaryPage.write(Path.of(to), out);
        }
    }

    /** What a run asks of the engine, beside what the cluster is set up for. */
    static Configuration settings(long checkpointSeconds) {
        Configuration settings = new Configuration();
        settings.set(CheckpointingOptions.CHECKPOINTING_INTERVAL, Duration.ofSeconds(checkpointSeconds));
        // blocks of a simulated fleet that wait for a busy step must not hold up a checkpoint
        settings.set(CheckpointingOptions.ENABLE_UNALIGNED, true);
        settings.set(CheckpointingOptions.ALIGNED_CHECKPOINT_TIMEOUT, Duration.ofSeconds(1));
        // a replay goes through hours of event time in a second: windows close in time, and state stays as small as in
        // life
        settings.set(PipelineOptions.AUTO_WATERMARK_INTERVAL, Duration.ofMillis(20));
        // no step changes what it has handed on
        settings.set(PipelineOptions.OBJECT_REUSE, true);
        return settings;
    }

    private static void write(ParameterTool options) throws IOException {
        FleetWriter.write(fleet(options), Path.of(options.getRequired("out")));
    }
}

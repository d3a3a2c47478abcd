package org.satline.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import org.apache.flink.api.common.JobID;
import org.apache.flink.configuration.CheckpointingOptions;
import org.apache.flink.configuration.Configuration;
import org.apache.flink.configuration.RestOptions;
import org.apache.flink.configuration.RestartStrategyOptions;
import org.apache.flink.core.execution.SavepointFormatType;
import org.apache.flink.runtime.executiongraph.AccessExecutionVertex;
import org.apache.flink.runtime.jobgraph.JobGraph;
import org.apache.flink.runtime.jobgraph.SavepointRestoreSettings;
import org.apache.flink.runtime.minicluster.MiniCluster;
import org.apache.flink.runtime.minicluster.MiniClusterConfiguration;
import org.apache.flink.streaming.api.environment.StreamExecutionEnvironment;

/** A small cluster within the test: task managers of one slot each, which can be killed. */
@SuppressWarnings("try") // the engine's own close may be interrupted
final class Cluster implements AutoCloseable {
    private static final int PAUSE_MS = 25;

    private final MiniCluster cluster;

    Cluster(int taskManagers) throws Exception {
        Configuration settings = new Configuration();
        settings.set(RestOptions.BIND_PORT, "0");
        cluster = new MiniCluster(new MiniClusterConfiguration.Builder()
                .setConfiguration(settings)
                .setNumTaskManagers(taskManagers)
                .setNumSlotsPerTaskManager(1)
                .build());
        cluster.start();
    }

    /** An undisturbed run on files. */
    static void run(Path in, long lastSecond, Path out, int slots) throws Exception {
        StreamExecutionEnvironment env = StreamExecutionEnvironment.createLocalEnvironment(slots, settings());
        FleetJob.onFiles(env, in.toString(), lastSecond, out.toString());
        env.execute();
    }

    /** A paced run on a simulated fleet on one slot, so that event time goes on between the readings. */
    static Results runSimulated(SimulatedFleet fleet, Path out) throws Exception {
        StreamExecutionEnvironment env = StreamExecutionEnvironment.createLocalEnvironment(1, settings());
        env.getConfig().setAutoWatermarkInterval(5);
        FleetJob.onSimulated(env, slow(fleet, 20), out.toString());
        env.execute();
        return Results.of(out);
    }

    /** A run on two task managers of which one is killed after some checkpoints, and replaced. */
    Results killOnce(SimulatedFleet fleet, Path out, Path checkpoints) throws Exception {
        Configuration settings = settings();
        settings.set(CheckpointingOptions.CHECKPOINT_STORAGE, "filesystem");
        settings.set(
                CheckpointingOptions.CHECKPOINTS_DIRECTORY, checkpoints.toUri().toString());
        JobID job = submit(job(settings, fleet, out, 2));
        waitFor(() -> !OutputFiles.lines(out, "days").isEmpty());
        cluster.terminateTaskManager(0).get();
        cluster.startTaskManager();
        finish(job);
        assertThat(attempts(job)).isGreaterThan(0);
        return Results.of(out);
    }

    /** A run on one slot that is stopped with a savepoint and goes on from it on two. */
    Results stopAndResume(SimulatedFleet fleet, Path out, Path savepoints) throws Exception {
        JobID first = submit(job(settings(), fleet, out, 1));
        waitFor(() -> !OutputFiles.lines(out, "days").isEmpty());
        String savepoint = cluster.stopWithSavepoint(
                        first, savepoints.toUri().toString(), false, SavepointFormatType.CANONICAL)
                .get();
        JobGraph second = job(settings(), fleet, out, 2);
        second.setSavepointRestoreSettings(SavepointRestoreSettings.forPath(savepoint));
        finish(submit(second));
        return Results.of(out);
    }

    /** How often the engine had to begin a task anew. */
    private int attempts(JobID job) throws Exception {
        int most = 0;
        for (AccessExecutionVertex vertex :
                cluster.getArchivedExecutionGraph(job).get().getAllExecutionVertices()) {
            most = Math.max(most, vertex.getCurrentExecutionAttempt().getAttemptNumber());
        }
        return most;
    }

    JobID submit(JobGraph graph) throws Exception {
        return cluster.submitJob(graph).get().getJobID();
    }

    void finish(JobID job) throws Exception {
        cluster.requestJobResult(job).get().toJobExecutionResult(Cluster.class.getClassLoader());
    }

    MiniCluster engine() {
        return cluster;
    }

    static JobGraph job(Configuration settings, SimulatedFleet fleet, Path out, int slots) {
        StreamExecutionEnvironment env = StreamExecutionEnvironment.createLocalEnvironment(slots, settings);
        FleetJob.onSimulated(env, slow(fleet, PAUSE_MS), out.toString());
        return env.getStreamGraph().getJobGraph();
    }

    private static SimulatedFleet slow(SimulatedFleet fleet, int millis) {
        return new SimulatedFleet(fleet.plan(), fleet.units(), fleet.days(), fleet.bursts(), fleet.late(), millis);
    }

    static Configuration settings() {
        Configuration settings = new Configuration();
        settings.set(CheckpointingOptions.CHECKPOINTING_INTERVAL, Duration.ofMillis(300));
        settings.set(RestartStrategyOptions.RESTART_STRATEGY, "fixed-delay");
        settings.set(RestartStrategyOptions.RESTART_STRATEGY_FIXED_DELAY_ATTEMPTS, 20);
        settings.set(RestartStrategyOptions.RESTART_STRATEGY_FIXED_DELAY_DELAY, Duration.ofMillis(200));
        return settings;
    }

    /** Something that the disk or the cluster tells. */
    interface Condition {
        boolean holds() throws Exception;
    }

    void waitFor(Condition condition) throws Exception {
        while (!condition.holds()) {
            Thread.sleep(50);
        }
    }

    @Override
    public void close() throws Exception {
        cluster.close();
    }
}

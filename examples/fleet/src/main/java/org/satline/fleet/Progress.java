package org.satline.fleet;

import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import org.apache.flink.api.common.JobExecutionResult;
import org.apache.flink.core.execution.JobClient;

/** Prints how far a running job is. The counts begin anew where the engine recovers a job; the files do not. */
final class Progress {
    static final String READINGS = "readings";
    static final String REJECTED = "rejected";
    static final String WINDOWS = "windows";
    static final String ALARMS = "alarms";

    private static final int EVERY_S = 5;

    private Progress() {}

    /** Waits for the end of the job. */
    static JobExecutionResult follow(JobClient job, Consumer<String> out)
            throws ExecutionException, InterruptedException {
        long begin = System.nanoTime();
        long before = 0;
        double beforeS = 0;
        while (true) {
            try {
                JobExecutionResult result = job.getJobExecutionResult().get(EVERY_S, TimeUnit.SECONDS);
                double seconds = (System.nanoTime() - begin) / 1e9;
                out.accept(line(result.getAllAccumulatorResults(), seconds, 0, 0));
                return result;
            } catch (TimeoutException e) {
                Map<String, Object> counts = job.getAccumulators().get();
                double seconds = (System.nanoTime() - begin) / 1e9;
                out.accept(line(counts, seconds, before, beforeS));
                before = count(counts, READINGS);
                beforeS = seconds;
            }
        }
    }

    private static String line(Map<String, Object> counts, double seconds, long before, double beforeS) {
        long readings = count(counts, READINGS);
        return String.format(
                Locale.ROOT,
                "%6.1f s: %d readings (%.0f a second), %d rejected, %d settled windows, %d alarms raised or gone",
                seconds,
                readings,
                (readings - before) / (seconds - beforeS),
                count(counts, REJECTED),
                count(counts, WINDOWS),
                count(counts, ALARMS));
    }

    private static long count(Map<String, Object> counts, String name) {
        return counts.getOrDefault(name, 0L) instanceof Long count ? count : 0;
    }
}

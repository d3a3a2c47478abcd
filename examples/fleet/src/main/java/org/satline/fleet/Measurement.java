package org.satline.fleet;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.flink.configuration.CheckpointingOptions;
import org.apache.flink.configuration.Configuration;
import org.apache.flink.streaming.api.environment.StreamExecutionEnvironment;

/**
 * What the engine costs beside a plain loop with the same library calls, in one process, and how that and the state
 * grow with units and slots. Processor time counts, since other programs on the machine lengthen the time on the clock.
 * The making of the simulated readings, and the start and end of the engine on hardly a reading, are measured by
 * themselves and taken off.
 */
final class Measurement {
    private static final double MINUTES_A_YEAR = 525_600;
    private static final int BURSTS = 96;
    /**
     * From the end of May on every unit runs by day and most by night: hardly a window is without work for the library.
     */
    private static final FleetPlan SUMMER = new FleetPlan(1, 20_600, 0.33, 0.05, 0.5, 0, 60, 0.2);

    private Measurement() {}

    private record Cost(double processorS, double clockS) {}

    private interface Work {
        void run() throws Exception;
    }

    /** Each cost is the median of so many runs: one alone is off by what else the machine does meanwhile. */
    static void print(long mostUnits, long readings, int repeats, Consumer<String> out) throws Exception {
        SimulatedFleet warm = fleet(1000, readings);
        make(warm);
        new PlainLoop().run(warm);
        engine(warm, 1);
        out.accept("| units | readings | made, s | start and end of the engine, s | plain loop, us a reading"
                + " | engine, one slot, us a reading | engine over loop"
                + " | two slots, us a reading | clock, two slots over one"
                + " | state, B a unit | unit-year, s of a core |");
        out.accept("|---|---|---|---|---|---|---|---|---|---|---|");
        for (long units = 1000; units <= mostUnits; units *= 10) {
            row(fleet(units, Math.max(readings, units * WindowReadings.MINUTES)), repeats, out);
        }
    }

    private static void row(SimulatedFleet fleet, int repeats, Consumer<String> out) throws Exception {
        double count = fleet.readings();
        double made = cost(repeats, () -> make(fleet)).processorS();
        Cost loop = cost(repeats, () -> new PlainLoop().run(fleet));
        long[] bytes = {0};
        double start = cost(repeats, () -> engine(fleet(100, WindowReadings.MINUTES), 1))
                .processorS();
        Cost one = cost(repeats, () -> bytes[0] = engine(fleet, 1));
        Cost two = cost(repeats, () -> engine(fleet, 2));
        double plain = (loop.processorS() - made) / count;
        double engine = (one.processorS() - made - start) / count;
        out.accept(String.format(
                Locale.ROOT,
                "| %d | %.0f | %.1f | %.1f | %.2f | %.2f | %.2f | %.2f | %.2f | %d | %.2f |",
                fleet.units(),
                count,
                made,
                start,
                1e6 * plain,
                1e6 * engine,
                engine / plain,
                1e6 * (two.processorS() - made - start) / count,
                two.clockS() / one.clockS(),
                bytes[0] / fleet.units(),
                engine * MINUTES_A_YEAR));
    }

    /** A reading a minute of so many units, as many windows as make the readings. */
    private static SimulatedFleet fleet(long units, long readings) {
        int days = (int) Math.max(1, readings / (units * WindowReadings.MINUTES * BURSTS));
        int bursts = (int) Math.min(BURSTS, Math.max(1, readings / (units * WindowReadings.MINUTES)));
        return new SimulatedFleet(SUMMER, units, days, bursts, false, 0);
    }

    private static void make(SimulatedFleet fleet) {
        long[] count = {0};
        for (long block = 0; block < fleet.blocks(); block++) {
            fleet.send(block, one -> count[0]++);
        }
    }

    private static Cost cost(int repeats, Work work) throws Exception {
        OperatingSystemMXBean machine = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        List<Cost> costs = new ArrayList<>();
        for (int i = 0; i < repeats; i++) {
            System.gc();
            long processor = machine.getProcessCpuTime();
            long clock = System.nanoTime();
            work.run();
            costs.add(new Cost((machine.getProcessCpuTime() - processor) / 1e9, (System.nanoTime() - clock) / 1e9));
        }
        costs.sort(Comparator.comparingDouble(Cost::processorS));
        return costs.get(repeats / 2);
    }

    /** Runs the job; returns the bytes of its largest checkpoint. */
    private static long engine(SimulatedFleet fleet, int slots) throws Exception {
        Path folder = Files.createTempDirectory("fleet");
        try {
            Configuration settings = Main.settings(2);
            settings.set(CheckpointingOptions.CHECKPOINT_STORAGE, "filesystem");
            settings.set(
                    CheckpointingOptions.CHECKPOINTS_DIRECTORY,
                    folder.resolve("checkpoints").toUri().toString());
            StreamExecutionEnvironment env = StreamExecutionEnvironment.createLocalEnvironment(slots, settings);
            FleetJob.onSimulated(env, fleet, folder.resolve("out").toString());
            LargestFolder largest = new LargestFolder(folder.resolve("checkpoints"));
            Thread watcher = new Thread(largest, "size of checkpoints");
            watcher.start();
            env.execute();
            largest.stop();
            watcher.join();
            return largest.bytes();
        } finally {
            delete(folder);
        }
    }

    private static void delete(Path folder) throws IOException {
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Files.delete(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path visited, IOException trouble) throws IOException {
                Files.delete(visited);
                return FileVisitResult.CONTINUE;
            }
        });
    }

    /** Looks now and then how much the checkpoints take. */
    private static final class LargestFolder implements Runnable {
        private final Path folder;
        private volatile boolean going = true;
        private volatile long bytes;

        LargestFolder(Path folder) {
            this.folder = folder;
        }

        void stop() {
            going = false;
        }

        long bytes() {
            return bytes;
        }

        @Override
        public void run() {
            try {
                while (going) {
                    Thread.sleep(200);
                    bytes = Math.max(bytes, size());
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }

        private static boolean isOfCheckpoint(Path file) {
            Path folder = file.getParent();
            return folder != null && folder.getFileName().toString().startsWith("chk-");
        }

        private long size() {
            if (!Files.isDirectory(folder)) {
                return 0;
            }
            try (Stream<Path> files = Files.walk(folder)) {
                return files
                        .filter(LargestFolder::isOfCheckpoint)
                        .collect(Collectors.groupingBy(
                                Path::getParent,
                                Collectors.summingLong(file -> file.toFile().length())))
                        .values()
                        .stream()
                        .mapToLong(Long::longValue)
                        .max()
                        .orElse(0);
            } catch (IOException | UncheckedIOException e) {
                return 0; // a checkpoint was deleted meanwhile
            }
        }
    }
}

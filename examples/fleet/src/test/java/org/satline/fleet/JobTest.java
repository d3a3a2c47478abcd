package org.satline.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The same events give the same lines: in order or shuffled, on one slot or two, with a task manager killed, from a
 * savepoint.
 */
@SuppressWarnings("try") // the close of a cluster may be interrupted
class JobTest {
    private static final SimulatedFleet FLEET =
            new SimulatedFleet(new FleetPlan(5, 20_600, 1, 0.6, 0.9, 22, 23, 0.9), 24, 70, 4, false, 0);

    private static final long BURST_EVERY_S = 6 * 3600;

    @TempDir
    static Path folder;

    private static Results expected;

    @BeforeAll
    static void undisturbedRun() throws Exception {
        FleetWriter.write(FLEET, folder.resolve("in"));
        expected = run("plain", "in", 1);
    }

    @Test
    void findsLeaksAndFaultsAndSaysWhyReadingsWereRejected() {
        assertThat(expected.alarms()).anyMatch(line -> line.contains(",LEAK,RAISED,"));
        assertThat(expected.alarms()).anyMatch(line -> line.contains(",LEAK,RATE_KNOWN,"));
        assertThat(expected.alarms()).anyMatch(JobTest::isOfATrueFault);
        for (RejectReason reason : RejectReason.values()) {
            assertThat(expected.rejected().stream().anyMatch(line -> line.startsWith(reason + ",")))
                    .as(reason.name())
                    .isEqualTo(reason != RejectReason.TOO_LATE);
        }
    }

    /** An alarm about something else than the charge, on a day on which something else is wrong. */
    private static boolean isOfATrueFault(String line) {
        String[] fields = line.split(",", -1);
        Cause cause = Cause.valueOf(fields[2]);
        boolean other = cause != Cause.LEAK && cause != Cause.UNDERCHARGE && cause != Cause.OVERCHARGE;
        return other
                && Alarm.News.valueOf(fields[3]) == Alarm.News.RAISED
                && new SimulatedUnit(FLEET.plan(), Long.parseLong(fields[0])).fault(Long.parseLong(fields[4]))
                        != UnitFault.NONE;
    }

    @Test
    void readingsOfADayAgoAreTooLate() throws Exception {
        SimulatedFleet late = new SimulatedFleet(FLEET.plan(), 24, 30, 4, true, 0);
        assertThat(Cluster.runSimulated(late, folder.resolve("late")).rejected())
                .anyMatch(line -> line.startsWith(RejectReason.TOO_LATE + ","));
    }

    @Test
    void twoSlotsGiveTheSame() throws Exception {
        assertThat(run("two", "in", 2)).isEqualTo(expected);
    }

    /** Readings of a quarter of an hour, shuffled: within the 30 minutes that are allowed. */
    @Test
    void shuffledReadingsGiveTheSame() throws Exception {
        Path shuffled = Files.createDirectories(folder.resolve("shuffled"));
        Random random = new Random(7);
        try (Stream<Path> files = Files.list(folder.resolve("in"))) {
            for (Path file : files.toList()) {
                Files.write(shuffled.resolve(file.getFileName()), shuffled(Files.readAllLines(file), random));
            }
        }
        assertThat(run("out-shuffled", "shuffled", 2)).isEqualTo(expected);
    }

    private static List<String> shuffled(List<String> lines, Random random) {
        List<String> all = new ArrayList<>();
        List<String> burst = new ArrayList<>();
        long burstOf = -1;
        for (String line : lines) {
            long of = ReadingLine.read(line, FLEET.lastSecond()) instanceof ReadingLine.Good good
                    ? good.reading().second / BURST_EVERY_S
                    : burstOf;
            if (of != burstOf) {
                Collections.shuffle(burst, random);
                all.addAll(burst);
                burst.clear();
                burstOf = of;
            }
            burst.add(line);
        }
        Collections.shuffle(burst, random);
        all.addAll(burst);
        return all;
    }

    @Test
    void aKilledTaskManagerLosesAndDoublesNothing() throws Exception {
        try (Cluster cluster = new Cluster(2)) {
            Results killed = cluster.killOnce(FLEET, folder.resolve("killed"), folder.resolve("killed-checkpoints"));
            assertThat(killed).isEqualTo(expected);
        }
    }

    @Test
    void aSavepointOfOneSlotGoesOnOnTwo() throws Exception {
        try (Cluster cluster = new Cluster(2)) {
            Results resumed = cluster.stopAndResume(FLEET, folder.resolve("resumed"), folder.resolve("savepoint"));
            assertThat(resumed).isEqualTo(expected);
        }
    }

    private static Results run(String to, String from, int slots) throws Exception {
        Path out = folder.resolve(to);
        Cluster.run(folder.resolve(from), FLEET.lastSecond(), out, slots);
        return Results.of(out);
    }
}

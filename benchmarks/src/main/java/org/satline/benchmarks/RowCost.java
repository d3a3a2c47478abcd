package org.satline.benchmarks;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.satline.charge.ChargeJudge;
import org.satline.charge.ChargeRow;
import org.satline.charge.ChargeScreen;
import org.satline.charge.margin.ImplausibleReadingException;

/**
 * Question: what processor time and how many bytes does a row of a service cost, judged and screened, in one run? Least of many rounds,
 * in the time of the
 * thread alone, so that other work on the machine counts little.
 */
public final class RowCost {
    private static final int ROUNDS = 150;
    private static final int JUDGED = 256;

    private RowCost() {}

    /** Work on so many rows. */
    private interface Work {
        int done();
    }

    /**
     * Prints one line for each refrigerant.
     *
     * @param arguments none
     */
    public static void main(String[] arguments) {
        for (String designation : List.of("R-410A", "R-407C")) {
            ServiceRows service = new ServiceRows(designation);
            List<ChargeRow> rows = Arrays.asList(service.rows);
            ChargeScreen screen = ChargeScreen.of(service.curve);
            String judged = cost(() -> judged(service), JUDGED, ROUNDS / 5);
            String screened = cost(() -> screen.screen(rows).size(), rows.size(), ROUNDS);
            String superheats = cost(
                    () -> service.curve
                            .superheats(service.suctionPa, service.suctionLineK)
                            .size(),
                    rows.size(),
                    ROUNDS);
            System.out.printf(
                    Locale.ROOT,
                    "%s judged %s; screened %s; superheat alone %s%n",
                    designation,
                    judged,
                    screened,
                    superheats);
        }
    }

    private static int judged(ServiceRows service) {
        ChargeJudge judge = ChargeJudge.usual();
        int letters = 0;
        for (int i = 0; i < JUDGED; i++) {
            try {
                letters += judge.judge(service.rows[i].chargeCase(service.curve))
                        .label()
                        .length();
            } catch (ImplausibleReadingException impossible) {
                letters++;
            }
        }
        return letters;
    }

    private static String cost(Work work, int rows, int rounds) {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        double least = Double.MAX_VALUE;
        long bytes = 0;
        for (int i = 0; i < rounds; i++) {
            long allocated = threads.getCurrentThreadAllocatedBytes();
            long time = threads.getCurrentThreadCpuTime();
            if (work.done() < 0) {
                throw new IllegalStateException("fewer than no rows");
            }
            least = Math.min(least, (threads.getCurrentThreadCpuTime() - time) / 1e3 / rows);
            bytes = (threads.getCurrentThreadAllocatedBytes() - allocated) / rows;
        }
        return String.format(Locale.ROOT, "%.3f us, %d B", least, bytes);
    }
}

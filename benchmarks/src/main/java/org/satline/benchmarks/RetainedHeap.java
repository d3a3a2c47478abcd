package org.satline.benchmarks;

import java.io.PrintStream;
import java.lang.ref.Reference;
import java.util.Locale;
import java.util.Optional;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;
import org.satline.tables.TableProvider;

/**
 * Question: how much heap does the curve of one refrigerant keep? Holds many curves of the same refrigerant and divides the heap that they
 * take. The catalogue, which all share, does not count.
 *
 * <p>Run it with a small fixed heap and the serial collector, whose figures repeat.
 */
public final class RetainedHeap {
    private static final int CURVES = 400;
    private static final double BYTES_PER_KB = 1024;
    /** The serial collector leaves some garbage lying but every fourth time. */
    private static final int COLLECTIONS = 4;

    private RetainedHeap() {}

    /**
     * Measures and prints each refrigerant that has a table, then the largest.
     *
     * @param arguments none
     */
    public static void main(String[] arguments) {
        PrintStream out = System.out;
        TableProvider tables = new TableProvider();
        kilobytes(tables, Catalogue.standard().find("R-410A")); // what is loaded once must not count for the first one
        String largestOf = "";
        double largest = 0;
        for (Refrigerant refrigerant : Catalogue.standard().all()) {
            if (tables.curve(refrigerant).isPresent()) {
                double kilobytes = kilobytes(tables, refrigerant);
                out.println(String.format(Locale.ROOT, "%-9s %.1f KB", refrigerant.designation(), kilobytes));
                if (kilobytes > largest) {
                    largest = kilobytes;
                    largestOf = refrigerant.designation();
                }
            }
        }
        out.println(String.format(Locale.ROOT, "largest: %s with %.1f KB", largestOf, largest));
    }

    private static double kilobytes(TableProvider tables, Refrigerant refrigerant) {
        SaturationCurve[] kept = new SaturationCurve[CURVES];
        long before = used();
        try {
            for (int i = 0; i < CURVES; i++) {
                Optional<SaturationCurve> curve = tables.curve(refrigerant);
                kept[i] = curve.orElseThrow();
            }
            return (used() - before) / BYTES_PER_KB / CURVES;
        } finally {
            Reference.reachabilityFence(kept);
        }
    }

    @SuppressWarnings("SystemGc")
    private static long used() {
        for (int i = 0; i < COLLECTIONS; i++) {
            System.gc();
        }
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }
}

package org.satline.audit.cause;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.satline.audit.answer.AuditCase;

/**
 * Some of many rows, picked by what stands in them: which ones does not depend on their order. Not thread-safe.
 */
public final class RowSample {
    /** So many are kept, and so many of them, evenly spaced in quantity and temperature or pressure, are given out. */
    private static final int KEPT = 600;

    private static final int GIVEN = 120;

    private static final Comparator<AuditCase> BY_CONTENT = Comparator.comparing(
                    (AuditCase c) -> c.question().quantity())
            .thenComparingDouble(c -> c.question().temperatureK().orElse(0))
            .thenComparingDouble(c -> c.question().pressurePa().orElse(0))
            .thenComparing(c -> c.row().unit())
            .thenComparingDouble(c -> c.comparison().answer())
            .thenComparing(c -> c.row().id());

    private record Ticket(long number, AuditCase row) {}

    private final PriorityQueue<Ticket> kept = new PriorityQueue<>(
            Comparator.comparingLong(Ticket::number).reversed().thenComparing(Ticket::row, BY_CONTENT.reversed()));

    /** An empty one. */
    public RowSample() {}

    /**
     * Offers a row.
     *
     * @param row the row
     */
    public void add(AuditCase row) {
        Ticket ticket = new Ticket(number(row), row);
        if (kept.size() < KEPT) {
            kept.add(ticket);
        } else if (kept.comparator().compare(ticket, kept.element()) > 0) {
            kept.remove();
            kept.add(ticket);
        }
    }

    /** {@return the rows of the sample} */
    public List<AuditCase> rows() {
        return spread(kept.stream().map(Ticket::row).sorted(BY_CONTENT).toList(), GIVEN);
    }

    static List<AuditCase> spread(List<AuditCase> rows, int most) {
        List<AuditCase> spread = new ArrayList<>();
        int count = Math.min(most, rows.size());
        for (int i = 0; i < count; i++) {
            spread.add(rows.get((int) ((long) i * rows.size() / count)));
        }
        return spread;
    }

    private static long number(AuditCase row) {
        long bits = Double.doubleToLongBits(row.question().temperatureK().orElse(0))
                ^ 31 * Double.doubleToLongBits(row.question().pressurePa().orElse(0));
        bits = 31 * bits + row.row().id().hashCode();
        bits = 31 * bits + row.row().answer().hashCode();
        bits = 31 * bits + row.column().hashCode();
        // the finishing steps of a common 64-bit hash, so that neighbours get numbers far apart
        bits = (bits ^ bits >>> 33) * 0xff51afd7ed558ccdL;
        bits = (bits ^ bits >>> 33) * 0xc4ceb9fe1a85ec53L;
        return bits ^ bits >>> 33;
    }
}

package org.satline.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import org.satline.audit.answer.AuditOutcome;
import org.satline.audit.answer.AuditOutcome.NotComparable;
import org.satline.audit.answer.AuditOutcome.Reason;
import org.satline.audit.answer.AuditRow;
import org.satline.audit.answer.Comparer;
import org.satline.audit.answer.Heard;
import org.satline.audit.cause.CauseFinder;
import org.satline.equilibrium.ReferenceState;

/**
 * Compares answers of another calculator with the equations of the library. Thread-safe; keeps the refrigerants it has prepared, so use one
 * for many rows.
 *
 * <p>An answer is within tolerance if it differs by no more than the tolerance of its row; where the row gives none, by no more than the
 * expanded uncertainty (coverage factor 2) of our value plus half of the last printed digit. Composition tolerances of blends do not count:
 * both calculators mean the nominal blend. Gauge answers count from the atmosphere of ISO 2533 at the altitude of the row, sea level where
 * it gives none.
 *
 * <p>Causes are searched on at most 120 of the rows outside of each refrigerant and 120 of those within, evenly spaced in quantity and
 * temperature or pressure; what is found there is counted on all of them. A mistake is named if it explains at least three rows and a third
 * of those left to which it could apply, with a chance of coincidence of at most 3 % (1 % where two are made at once, or for another
 * refrigerant), or fewer rows with one of at most 1 in 10000; see {@link
 * org.satline.audit.cause.LikelyCause#coincidence()}. Where no row is outside, yet all differ in the way of a mistake by more
 * than their digits, it is named with a chance of at most 1 in 1000.
 */
public final class Auditor {
    private final Comparer comparer;
    private final CauseFinder causes;

    private Auditor(ReferenceState reference) {
        this.comparer = new Comparer(reference);
        this.causes = new CauseFinder(reference);
    }

    /**
     * Returns an auditor that expects enthalpy and entropy from the IIR reference state.
     *
     * @return an auditor
     */
    public static Auditor standard() {
        return of(ReferenceState.IIR);
    }

    /**
     * Returns an auditor that expects another reference state of enthalpy and entropy. A refrigerant for which it does not exist keeps its
     * default one.
     *
     * @param reference the reference state
     * @return an auditor
     */
    public static Auditor of(ReferenceState reference) {
        return new Auditor(Objects.requireNonNull(reference, "reference"));
    }

    /**
     * Compares rows and looks for the causes of differences.
     *
     * @param rows the rows
     * @return one outcome for each row, in the same order, and a summary that does not depend on the order
     */
    public AuditReport audit(List<AuditRow> rows) {
        List<AuditOutcome> outcomes = new ArrayList<>();
        AuditSummary summary = audit(
                taker -> rows.forEach(row -> taker.accept(new AuditSource.Entry(row, Optional.empty()))),
                audited -> outcomes.add(audited.outcome()));
        return new AuditReport(outcomes, summary);
    }

    /**
     * Compares rows that need not fit into memory and looks for the causes of differences. Of each row a few sums are kept and of each
     * refrigerant some hundred rows. The rows are read twice, on all processors.
     *
     * @param source the rows
     * @param taker takes each row with what became of it, in order, once all have been read
     * @return a summary that does not depend on the order
     */
    public AuditSummary audit(AuditSource source, Consumer<AuditedRow> taker) {
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(taker, "taker");
        Gathering gathering = new Gathering();
        Pass.over(source, this::heard, gathering::add);
        Tally tally = gathering.searched(causes);
        Pass.Counting counting = new Pass.Counting(tally, taker);
        Pass.over(source, entry -> heard(entry).told(), counting::add);
        counting.finish();
        return gathering.summary(tally);
    }

    /**
     * Compares one row.
     *
     * @param row the row
     * @return what became of it
     */
    public AuditOutcome compare(AuditRow row) {
        return comparer.compare(row).outcome();
    }

    private Heard heard(AuditSource.Entry entry) {
        return entry.fault()
                .map(fault -> Heard.refused(new NotComparable(entry.row(), Reason.ROW_UNREADABLE, fault)))
                .orElseGet(() -> comparer.compare(entry.row()));
    }
}

package org.satline.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.satline.audit.answer.AuditOutcome;
import org.satline.audit.answer.AuditRow;
import org.satline.audit.answer.AuditedQuantity;
import org.satline.audit.cause.LikelyCause;

/** Rows that pass by give the same audit as rows in a list, in their order, each with the mistake that explains it. */
class StreamedAuditTest {
    private static final Auditor AUDITOR = Auditor.standard();

    /** Dew pressures of R-134a in kPa, each as long as the one before; every other one a gauge pressure (101.325 kPa, ISO 2533). */
    private static List<AuditRow> rows() {
        List<AuditRow> rows = new ArrayList<>();
        Random random = new Random(9);
        for (int i = 0; i < 5000; i++) {
            double kelvins = 250 + Math.rint(400 * random.nextDouble()) / 10;
            AuditRow asked =
                    AuditRow.atTemperature("r" + i, "R-134a", AuditedQuantity.DEW_PRESSURE, kelvins, "0.0", "kPa");
            double ours = ((AuditOutcome.Compared) AUDITOR.compare(asked))
                    .comparison()
                    .ours();
            double answer = i % 2 == 0 ? ours : ours - 101.325;
            rows.add(AuditRow.atTemperature(
                    "r" + i,
                    "R-134a",
                    AuditedQuantity.DEW_PRESSURE,
                    kelvins,
                    String.format(Locale.ROOT, "%.2f", answer),
                    "kPa"));
        }
        return rows;
    }

    @Test
    void eachRowComesOutInItsPlaceWithItsMistake() {
        List<AuditRow> rows = rows();
        List<AuditedRow> out = new ArrayList<>();
        AuditSummary summary = AUDITOR.audit(
                taker -> {
                    rows.forEach(row -> taker.accept(new AuditSource.Entry(row, Optional.empty())));
                    taker.accept(new AuditSource.Entry(rows.get(0), Optional.of("no cell can be read")));
                },
                out::add);
        assertThat(out).hasSize(5001);
        for (int i = 0; i < 5000; i++) {
            assertThat(out.get(i).outcome().row()).isEqualTo(rows.get(i));
            assertThat(out.get(i).mistakes()).hasSize(i % 2);
        }
        assertThat(out.get(5000).outcome()).isInstanceOf(AuditOutcome.NotComparable.class);
        assertThat(summary.outside()).isEqualTo(2500);
        assertThat(summary.unexplained()).isZero();
        assertThat(summary.causes()).hasSize(1);
        assertThat(summary.causes().get(0).explained()).isEqualTo(2500);
        assertThat(summary.causes().get(0).ids()).hasSize(LikelyCause.MOST_IDS);
        Collections.reverse(rows);
        AuditSummary turned = AUDITOR.audit(rows).summary();
        assertThat(turned.causes()).isEqualTo(summary.causes());
        assertThat(turned.biases()).isEqualTo(summary.biases());
    }
}

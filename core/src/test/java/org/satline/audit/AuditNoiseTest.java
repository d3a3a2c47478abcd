package org.satline.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.satline.audit.answer.AuditOutcome;
import org.satline.audit.answer.AuditRow;
import org.satline.audit.answer.AuditedQuantity;
import org.satline.audit.cause.LikelyCause;
import org.satline.audit.cause.LikelyCause.Kind;

/** Answers without a mistake in them: no source, the answers are drawn from a fixed seed. */
class AuditNoiseTest {
    private static final Auditor AUDITOR = Auditor.standard();

    /** Dew pressures in kPa between 235 and 315 K. */
    private static List<AuditRow> rows(String refrigerant, int count, Random random, DoubleUnaryOperator answer) {
        List<AuditRow> rows = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double t = Math.rint(1000 * (235 + 80 * random.nextDouble())) / 1000;
            rows.add(AuditRow.atTemperature(
                    refrigerant + "-" + i,
                    refrigerant,
                    AuditedQuantity.DEW_PRESSURE,
                    t,
                    String.format(Locale.ROOT, "%.2f", answer.applyAsDouble(ours(refrigerant, t))),
                    "kPa"));
        }
        return rows;
    }

    private static double ours(String refrigerant, double t) {
        AuditRow row = AuditRow.atTemperature("", refrigerant, AuditedQuantity.DEW_PRESSURE, t, "0", "kPa");
        return ((AuditOutcome.Compared) AUDITOR.compare(row)).comparison().ours();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void nothingIsReadIntoPureNoise(long seed) {
        Random random = new Random(seed);
        List<AuditRow> rows = new ArrayList<>();
        // anywhere, many rows and few, and a few per cent about our value
        rows.addAll(rows("R-410A", 300, random, p -> 2000 * random.nextDouble()));
        rows.addAll(rows("R-134a", 6, random, p -> 2000 * random.nextDouble()));
        rows.addAll(rows("R-407C", 40, random, p -> p * (1 + 0.05 * random.nextGaussian())));
        AuditSummary summary = AUDITOR.audit(rows).summary();
        assertThat(summary.outside()).isGreaterThan(310);
        assertThat(summary.causes()).isEmpty();
        assertThat(summary.unexplained()).isEqualTo(summary.outside());
    }

    @Test
    void aMistakeInTwoRowsOfThreeIsStillNamedAndCountedBeyondTheRowsSearched() {
        Random random = new Random(6);
        List<AuditRow> rows = rows("R-134a", 400, random, p -> p - 101.325);
        rows.addAll(rows("R-134a", 200, random, p -> 2000 * random.nextDouble()));
        AuditSummary summary = AUDITOR.audit(rows).summary();
        assertThat(summary.causes()).hasSize(1);
        LikelyCause cause = summary.causes().get(0);
        assertThat(cause.kind()).isEqualTo(Kind.GAUGE_OR_ABSOLUTE);
        assertThat(cause.explained()).isBetween(400, 402); // a random answer may fit too
        assertThat(cause.candidates()).isEqualTo(summary.outside());
        assertThat(cause.coincidence()).isLessThan(1e-4);
    }
}

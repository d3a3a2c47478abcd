package org.satline.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.satline.audit.answer.AuditRow;
import org.satline.audit.cause.LikelyCause;
import org.satline.audit.cause.Mistake.Code;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/**
 * Answers with planted mistakes: tables of saturation pressure in kPa at temperatures in kelvins, spoilt by sums of this test alone and
 * rounded to so many digits; which mistakes people make is common practice, no source.
 */
class PlantedMistakesTest {
    private static final Auditor AUDITOR = Auditor.standard();
    /** Substances alone: the uncertainty of a blend's pairs hides a mistake of 0.15 K. */
    private static final List<String> NAMES = List.of("R-134a", "R-32");

    private static final double AIR_KPA = 101.325;

    /** What a wrong calculator answers at a temperature, kPa. */
    private interface Wrong {
        double at(SaturationCurve curve, double kelvins);
    }

    private static double dew(SaturationCurve curve, double kelvins) {
        return curve.dewPressurePa(kelvins) / 1000;
    }

    private static final Map<Code, Wrong> SINGLE = new LinkedHashMap<>();
    private static final Map<List<Code>, Wrong> PAIRS = new LinkedHashMap<>();

    static {
        SINGLE.put(Code.GAUGE_CALLED_ABSOLUTE, (c, t) -> dew(c, t) - AIR_KPA);
        SINGLE.put(Code.OTHER_UNIT, (c, t) -> dew(c, t) / 6.894757293168361);
        SINGLE.put(Code.DECIMAL_PLACE, (c, t) -> 10 * dew(c, t));
        SINGLE.put(Code.USED_TOO_LOW, (c, t) -> dew(c, t - 0.15));
        SINGLE.put(Code.QUESTION_LACKS_32, (c, t) -> dew(c, t - 32 / 1.8));
        SINGLE.put(Code.STRAIGHT_LINE, (c, t) -> {
            double low = 273.15 + 20 * Math.floor((t - 273.15) / 20);
            return dew(c, low) + (t - low) / 20 * (dew(c, low + 20) - dew(c, low));
        });
        PAIRS.put(
                List.of(Code.GAUGE_CALLED_ABSOLUTE, Code.OTHER_UNIT),
                (c, t) -> (dew(c, t) - AIR_KPA) / 6.894757293168361);
        PAIRS.put(
                List.of(Code.QUESTION_LACKS_32, Code.GAUGE_CALLED_ABSOLUTE), (c, t) -> dew(c, t - 32 / 1.8) - AIR_KPA);
        PAIRS.put(List.of(Code.USED_TOO_LOW, Code.OTHER_UNIT), (c, t) -> dew(c, t - 0.15) / 100);
    }

    private static List<AuditRow> rows(String name, int decimals, DoubleUnaryOperator answer) {
        List<AuditRow> rows = new ArrayList<>();
        for (int i = 0; i < 25; i++) {
            double kelvins = new BigDecimal("251.15")
                    .add(new BigDecimal("2.3").multiply(BigDecimal.valueOf(i)))
                    .doubleValue();
            String number = BigDecimal.valueOf(answer.applyAsDouble(kelvins))
                    .setScale(decimals, RoundingMode.HALF_EVEN)
                    .toPlainString();
            rows.add(new AuditRow(
                    String.valueOf(i),
                    name,
                    "dew_pressure",
                    OptionalDouble.of(kelvins),
                    OptionalDouble.empty(),
                    number,
                    "kPa",
                    Optional.empty(),
                    OptionalDouble.empty()));
        }
        return rows;
    }

    private static List<LikelyCause> causes(String name, int decimals, Wrong wrong) {
        SaturationCurve curve = SaturationCurves.solving(Catalogue.standard().find(name));
        return AUDITOR.audit(rows(name, decimals, t -> wrong.at(curve, t)))
                .summary()
                .causes();
    }

    @Test
    void singleMistakesAreNamedAtTwoRoundings() {
        for (int decimals : new int[] {2, 1}) {
            SINGLE.forEach((code, wrong) -> {
                for (String name : NAMES) {
                    List<LikelyCause> causes = causes(name, decimals, wrong);
                    assertThat(causes)
                            .as("%s of %s, %d decimals", code, name, decimals)
                            .hasSize(1);
                    assertThat(causes.get(0).mistake().code()).isEqualTo(code);
                    assertThat(causes.get(0).besides()).isEmpty();
                }
            });
        }
    }

    @Test
    void twoMistakesInTheSameRowsAreNamedTogether() {
        PAIRS.forEach((codes, wrong) -> {
            List<LikelyCause> causes = causes("R-134a", 2, wrong);
            assertThat(causes).as("%s", codes).hasSize(1);
            assertThat(List.of(
                            causes.get(0).mistake().code(),
                            causes.get(0).besides().orElseThrow().code()))
                    .containsExactlyInAnyOrderElementsOf(codes);
        });
    }

    @Test
    void cleanNoisyAndDriftingAnswersHaveNoCause() {
        Random random = new Random(20);
        for (int file = 0; file < 30; file++) {
            double noise = file % 3 == 1 ? 0.02 : 0;
            double drift = file % 3 == 2 ? 0.0004 * (1 + random.nextDouble()) : 0;
            assertThat(causes(
                            List.of("R-134a", "R-32", "R-290").get(file % 3),
                            file % 2 + 1,
                            (c, t) -> dew(c, t) * (1 + noise * random.nextGaussian() + drift * (t - 250))))
                    .as("file %d", file)
                    .isEmpty();
        }
    }
}

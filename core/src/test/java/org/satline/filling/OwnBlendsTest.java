package org.satline.filling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.satline.equation.EquationLibrary;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Composition;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** A service that makes blends for its callers day after day keeps nothing of them. */
class OwnBlendsTest {
    private static final FillAssessor ASSESSOR = FillAssessor.standard();
    private static final Refrigerant R32 = Catalogue.standard().find("R-32");
    private static final Refrigerant R744 = Catalogue.standard().find("R-744");
    private static final Refrigerant R125 = Catalogue.standard().find("R-125");
    /** Names that were kept took 210 bytes each; what the virtual machine itself does stays below. */
    private static final long MOST_BYTES_A_NAME = 40;

    private static Refrigerant blend(String name, double share) {
        return Refrigerant.blend(name, Composition.ofMassFractions(Map.of(R32, share, R125, 1 - share)));
    }

    private static void name(int from, int to) {
        for (int i = from; i < to; i++) {
            assertThat(blend("a caller's own mix, batch " + i, 0.3).isBlend()).isTrue();
            assertThat(EquationLibrary.standard().hasEquation("batch " + i)).isFalse();
        }
        for (int i = from; i < to; i += 1000) {
            assertThat(SaturationCurves.of(blend("asked mix " + i, 0.3)).warnings())
                    .isNotNull();
        }
    }

    /** R-125 with a little R-744 is a high-pressure gas (ADR 2025, 2.2.2.1.3: critical up to 65 degC): its limit takes a model. */
    private static void fill(int from, int to) {
        for (int i = from; i < to; i++) {
            double share = 0.1 + 1e-6 * i;
            SaturationCurve curve = SaturationCurves.of(Refrigerant.blend(
                    "filled mix " + i, Composition.ofMassFractions(Map.of(R744, share, R125, 1 - share))));
            assertThat(ASSESSOR.assess(FillQuestion.of(Samples.european(60), curve)
                                    .under(ASSESSOR.rules().jurisdiction("adr")))
                            .answers()
                            .outcomeOf(ASSESSOR.rules().rule("settled-pressure-65C")))
                    .isInstanceOf(RuleOutcome.MassLimit.class);
        }
    }

    private static long used() throws InterruptedException {
        long least = Long.MAX_VALUE;
        for (int i = 0; i < 4; i++) {
            System.gc();
            Thread.sleep(20);
            Runtime machine = Runtime.getRuntime();
            least = Math.min(least, machine.totalMemory() - machine.freeMemory());
        }
        return least;
    }

    @Test
    void oneHundredThousandNamesLeaveNothing() throws InterruptedException {
        int many = 100_000;
        name(0, many / 10);
        long before = used();
        name(many / 10, many);
        assertThat((used() - before) / (many * 9 / 10)).isLessThan(MOST_BYTES_A_NAME);
    }

    @Test
    void modelsOfFilledBlendsAreBounded() throws InterruptedException {
        fill(0, 66);
        long before = used();
        fill(66, 130);
        // as many again would be kept if all were
        assertThat(used() - before).isLessThan(300_000);
    }
}

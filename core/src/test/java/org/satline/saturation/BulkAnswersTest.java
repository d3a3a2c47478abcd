package org.satline.saturation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.NoSuchElementException;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Catalogue;

class BulkAnswersTest {
    private static final SaturationCurve CURVE =
            SaturationCurves.solving(Catalogue.standard().find("R-407C"));
    private static final double[] PA = {4e5, Double.NaN, 9e9, 6e5, 0, 5e5, 5e5, 5e5};
    private static final double[] K = {280, 281, 282, 283, 284, Double.NaN, -1, Double.POSITIVE_INFINITY};
    private static final ElementStatus[] STATUSES = {
        ElementStatus.ANSWERED,
        ElementStatus.NOT_GIVEN,
        ElementStatus.OUTSIDE,
        ElementStatus.ANSWERED,
        ElementStatus.OUTSIDE,
        ElementStatus.NOT_GIVEN,
        ElementStatus.OUTSIDE,
        ElementStatus.OUTSIDE
    };

    @Test
    void eachElementHasAValueOrAReason() {
        for (BulkAnswers answers : new BulkAnswers[] {CURVE.superheats(PA, K), CURVE.subcoolings(PA, K)}) {
            assertThat(IntStream.range(0, answers.size()).mapToObj(answers::status))
                    .containsExactly(STATUSES);
            assertThat(answers.count(ElementStatus.ANSWERED)).isEqualTo(2);
            assertThatThrownBy(() -> answers.value(1)).isInstanceOf(NoSuchElementException.class);
            assertThatThrownBy(() -> answers.value(8)).isInstanceOf(IndexOutOfBoundsException.class);
            assertThat(answers.values(-999)[2]).isEqualTo(-999);
        }
        Pressure p = Pressure.ofPascals(PA[3]);
        Temperature t = Temperature.ofKelvins(K[3]);
        assertThat(CURVE.superheats(PA, K).value(3))
                .isEqualTo(CURVE.superheat(p, t).kelvins());
        assertThat(CURVE.subcoolings(PA, K).value(3))
                .isEqualTo(CURVE.subcooling(p, t).kelvins());
    }

    @ParameterizedTest
    @EnumSource(SaturationProperty.class)
    void anyPropertyAnswersEachElement(SaturationProperty property) {
        double good = property.askedByPressure() ? 5e5 : 280;
        BulkAnswers answers = CURVE.each(property, new double[] {good, Double.NaN, -1, 1e9, good});
        assertThat(answers.value(0)).isEqualTo(CURVE.value(property, good)).isEqualTo(answers.value(4));
        assertThat(answers.count(ElementStatus.OUTSIDE)).isEqualTo(2);
        assertThat(answers.unit()).isEqualTo(property.unit());
    }

    @Test
    void arraysOfDifferentLengthAreRefused() {
        assertThatThrownBy(() -> CURVE.superheats(new double[2], new double[3]))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> CURVE.subcoolings(new double[2], new double[3]))
                .isInstanceOf(IllegalArgumentException.class);
    }
}

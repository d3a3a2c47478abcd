package org.satline.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.satline.equation.EquationLibrary;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.Engine;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.saturation.SaturationProperty;

/**
 * What holds for each table of the catalogue. Monotone because the physics is (Clausius and Clapeyron: pressure rises with temperature).
 */
class EveryTableTest {
    private static final int POINTS = 1000;

    static Stream<Refrigerant> withEquations() {
        return Catalogue.standard().all().stream().filter(EveryTableTest::hasEquation);
    }

    private static boolean hasEquation(Refrigerant refrigerant) {
        return refrigerant.hasComposition()
                && refrigerant.composition().components().stream()
                        .allMatch(part -> EquationLibrary.standard()
                                .hasEquation(part.substance().designation()));
    }

    @Test
    void everyRefrigerantWithAnEquationHasATableThatIsUsed() {
        List<String> solved = withEquations()
                .map(SaturationCurves::of)
                .filter(curve -> curve.engine() != Engine.TABLE)
                .map(curve -> curve.refrigerant().designation())
                .toList();
        assertThat(solved).isEmpty();
        assertThat(withEquations().count()).isEqualTo(192);
    }

    @ParameterizedTest
    @MethodSource("withEquations")
    void pressureAndTemperatureRiseTogether(Refrigerant refrigerant) {
        SaturationCurve curve = SaturationCurves.of(refrigerant);
        TableCurve table = (TableCurve) curve;
        for (SaturationProperty property : List.of(
                SaturationProperty.BUBBLE_PRESSURE,
                SaturationProperty.DEW_PRESSURE,
                SaturationProperty.BUBBLE_TEMPERATURE,
                SaturationProperty.DEW_TEMPERATURE)) {
            Column column = table.column(property);
            double before = Double.NEGATIVE_INFINITY;
            for (int i = 0; i <= POINTS; i++) {
                double at = Math.min(column.high, column.low + (column.high - column.low) * i / POINTS);
                double value = curve.value(property, at);
                assertThat(value).as("%s at %s", property.words(), at).isGreaterThan(before);
                before = value;
            }
        }
    }
}

package org.satline.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.satline.equilibrium.Range;
import org.satline.saturation.SaturationProperty;

class TableProperties {
    private static final TableCurve CURVE = Tables.of("R-410A");
    /** Neighbouring pieces meet within about 1e-12 of the value, some 1e-10 K; answers closer together than this may change places. */
    private static final double CLOSEST = 1e-6;

    private static double at(SaturationProperty property, double fraction) {
        Column column = CURVE.column(property);
        return column.low + fraction * (column.high - column.low);
    }

    @Property
    void risingPropertiesRise(
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.9) double a,
            @ForAll @Scale(9) @DoubleRange(min = CLOSEST, max = 0.1) double step) {
        for (SaturationProperty property : new SaturationProperty[] {
            SaturationProperty.BUBBLE_PRESSURE,
            SaturationProperty.DEW_PRESSURE,
            SaturationProperty.BUBBLE_TEMPERATURE,
            SaturationProperty.DEW_TEMPERATURE,
            SaturationProperty.DEW_VAPOUR_DENSITY,
            SaturationProperty.BUBBLE_LIQUID_ENTHALPY,
            SaturationProperty.BUBBLE_LIQUID_ENTROPY
        }) {
            assertThat(CURVE.value(property, at(property, a + step)))
                    .as(property.words())
                    .isGreaterThan(CURVE.value(property, at(property, a)));
        }
    }

    @Property(tries = 100)
    void anyThreadInAnyOrderGetsTheSameAnswer(@ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double fraction) {
        for (SaturationProperty property : SaturationProperty.values()) {
            double x = Math.min(at(property, fraction), CURVE.column(property).high);
            double alone = CURVE.value(property, x);
            assertThat(IntStream.range(0, 8).parallel().mapToDouble(i -> CURVE.value(property, x)))
                    .containsOnly(alone);
        }
    }

    @Property
    void piecesMeet(@ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double fraction) {
        for (SaturationProperty property : SaturationProperty.values()) {
            Column column = CURVE.column(property);
            int piece = (int) (fraction * (column.data.bodyPieces() - 1)) + 1;
            int bits = Column.Octaves.pieceBits(property);
            double joint = column instanceof Column.Octaves
                    ? Column.Octaves.start(Column.Octaves.index(column.low, bits) + piece, bits)
                    : column.low + piece * (column.split - column.low) / column.data.bodyPieces();
            double below = column.at(joint * (1 - 1e-13));
            double above = column.at(Math.min(column.high, joint * (1 + 1e-13)));
            assertThat(Math.abs(above - below)).isLessThan(2e-11 * Math.abs(below)); // rounding of coefficients
        }
    }

    @Property(tries = 50)
    void engineIsToldForEachAnswer(@ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double fraction) {
        for (SaturationProperty property : SaturationProperty.values()) {
            Range range = SaturationContract.range(CURVE, property);
            double x = Math.min(range.high(), range.low() + fraction * (range.high() - range.low()));
            assertThat(CURVE.engineAt(property, x).name())
                    .isEqualTo(CURVE.column(property).covers(x) ? "TABLE" : "EQUATION");
        }
    }
}

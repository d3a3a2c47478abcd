package org.satline.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Composition;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.Engine;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.saturation.SaturationProperty;

class TableProviderTest {
    private static Refrigerant named(String name) {
        return Catalogue.standard().find(name);
    }

    @Test
    void serviceLoaderFindsTables() {
        SaturationCurve curve = SaturationCurves.of(named("R-134a"));
        assertThat(curve.engine()).isEqualTo(Engine.TABLE);
        assertThat(curve.engineAt(SaturationProperty.DEW_PRESSURE, 280)).isEqualTo(Engine.TABLE);
        assertThat(curve.source())
                .isEqualTo(SaturationCurves.solving(named("R-134a")).source());
        assertThat(curve.referenceState())
                .isEqualTo(SaturationCurves.solving(named("R-134a")).referenceState());
    }

    @Test
    void blendOfTheCallersOwnIsSolved() {
        Refrigerant other = Refrigerant.blend(
                "shop mix", Composition.ofMassFractions(Map.of(named("R-32"), 0.6, named("R-125"), 0.4)));
        assertThat(new TableProvider().curve(other)).isEmpty();
        assertThat(SaturationCurves.of(other).engine()).isEqualTo(Engine.EQUATION);
    }

    @Test
    void equationAnswersBeyondTheTableAndSaysSo() {
        SaturationCurve table = SaturationCurves.of(named("R-410A"));
        SaturationCurve solving = SaturationCurves.solving(named("R-410A"));
        double high = solving.dewTemperatureRange().high();
        assertThat(table.engineAt(SaturationProperty.DEW_VAPOUR_DENSITY, high)).isEqualTo(Engine.EQUATION);
        assertThat(table.dewVapourDensity(high)).isCloseTo(solving.dewVapourDensity(high), within(1e-9));
    }

    @Test
    void r134aMeetsThePublishedSaturationPressure() {
        // ASHRAE Handbook Fundamentals 2021 (SI), chapter 2, example 2: 132.73 kPa at -20 degC, 770.2 kPa at 30 degC;
        // half of the last digit
        SaturationCurve curve = SaturationCurves.of(named("R-134a"));
        assertThat(curve.dewPressurePa(253.15)).isCloseTo(132.73e3, within(5.0));
        assertThat(curve.dewPressurePa(303.15)).isCloseTo(770.2e3, within(50.0));
    }
}

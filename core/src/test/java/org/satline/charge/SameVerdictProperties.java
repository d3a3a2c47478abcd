package org.satline.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.satline.charge.margin.ChargeLevel;
import org.satline.charge.margin.Deviation;
import org.satline.charge.margin.MeteringDevice;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Composition;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** The same state gives the same verdict, in whatever units it is told and however pure the refrigerant is written. */
class SameVerdictProperties {
    private static final Refrigerant R32 = Catalogue.standard().find("R-32");
    private static final SaturationCurve PURE = SaturationCurves.solving(R32);
    private static final SaturationCurve NEARLY_PURE = SaturationCurves.solving(nearlyPure());
    private static final Atmosphere SITE = Atmosphere.standard();
    private static final double PSI = 6894.757293168361;

    private static Refrigerant nearlyPure() {
        Map<Refrigerant, Double> mass = new LinkedHashMap<>();
        mass.put(R32, 1 - 1e-6);
        mass.put(Catalogue.standard().find("R-125"), 1e-6);
        return Refrigerant.blend("nearly pure", Composition.ofMassFractions(mass));
    }

    private static Deviation judged(
            SaturationCurve curve,
            Pressure suction,
            Temperature suctionLine,
            Pressure liquid,
            Temperature liquidLine,
            TemperatureDifference target) {
        SystemReadings readings = SystemReadings.builder()
                .suction(Reading.of(suction, 3000, "low side"), Reading.of(suctionLine, 0.4, "suction"))
                .liquid(Reading.of(liquid, 5000, "high side"), Reading.of(liquidLine, 0.4, "liquid"))
                .build();
        return ChargeJudge.usual()
                .judge(new ChargeCase(
                        curve,
                        readings,
                        ChargeQuestion.of(MeteringDevice.EXPANSION_VALVE, Optional.of(target)),
                        OperatingConditions.unknown()))
                .evidence()
                .deviation()
                .orElseThrow();
    }

    @Property(tries = 300)
    void tradeUnitsAndSiGiveTheSameVerdict(
            @ForAll @DoubleRange(min = 115, max = 125) double suctionPsig,
            @ForAll @DoubleRange(min = 330, max = 420) double liquidPsig,
            @ForAll @DoubleRange(min = 52, max = 60) double suctionLineF,
            @ForAll @DoubleRange(min = 70, max = 100) double liquidLineF) {
        Deviation trade = judged(
                PURE,
                Pressure.parse(text("%.1f psig", suctionPsig), SITE),
                Temperature.parse(text("%.1f degF", suctionLineF)),
                Pressure.parse(text("%.1f psig", liquidPsig), SITE),
                Temperature.parse(text("%.1f degF", liquidLineF)),
                TemperatureDifference.parse("10 degF"));
        Deviation si = judged(
                PURE,
                Pressure.ofPascals(101325 + PSI * tenths(suctionPsig)),
                Temperature.ofKelvins((tenths(suctionLineF) + 459.67) / 1.8),
                Pressure.ofPascals(101325 + PSI * tenths(liquidPsig)),
                Temperature.ofKelvins((tenths(liquidLineF) + 459.67) / 1.8),
                TemperatureDifference.ofKelvins(10 / 1.8));
        assertThat(si.level()).isEqualTo(trade.level());
        // the conversions are exact; what is left is the round-off of some 1e-13 of 300 K over u = 0.4 K
        for (ChargeLevel level : ChargeLevel.values()) {
            assertThat(si.probability(level)).isCloseTo(trade.probability(level), within(1e-9));
        }
    }

    /**
     * A trace of 1e-6 of another component. The gas constant of a mixture differs from that of the equation of R-32
     * by up to 2e-5, so
     * pressures do too: at most 2e-5 x 35 K = 0.7 mK of saturation temperature; over u = 0.4 K, times the largest
     * density 0.4 of the normal
     * distribution: 7e-4.
     */
    @Property(tries = 100)
    void aNearlyPureBlendIsJudgedLikeItsSubstance(
            @ForAll @DoubleRange(min = 330, max = 420) double liquidPsig,
            @ForAll @DoubleRange(min = 70, max = 100) double liquidLineF) {
        Pressure suction = Pressure.parse("120 psig", SITE);
        Pressure liquid = Pressure.ofPascals(101325 + PSI * liquidPsig);
        Temperature suctionLine = Temperature.ofFahrenheit(60);
        Temperature liquidLine = Temperature.ofFahrenheit(liquidLineF);
        TemperatureDifference target = TemperatureDifference.ofKelvins(5.5);
        Deviation pure = judged(PURE, suction, suctionLine, liquid, liquidLine, target);
        Deviation nearly = judged(NEARLY_PURE, suction, suctionLine, liquid, liquidLine, target);
        for (ChargeLevel level : ChargeLevel.values()) {
            assertThat(nearly.probability(level)).isCloseTo(pure.probability(level), within(7e-4));
        }
    }

    private static String text(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }

    private static double tenths(double value) {
        return Double.parseDouble(text("%.1f", value));
    }
}

package org.satline.misuse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.satline.charge.ChargeCase;
import org.satline.charge.ChargeJudge;
import org.satline.charge.ChargeQuestion;
import org.satline.charge.ChargeRow;
import org.satline.charge.ChargeScreen;
import org.satline.charge.OperatingConditions;
import org.satline.charge.margin.ImplausibleReadingException;
import org.satline.charge.margin.Margins;
import org.satline.charge.margin.MeteringDevice;
import org.satline.equation.EquationLibrary;
import org.satline.equation.InteractionModel;
import org.satline.equation.MissingEquationException;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.TwoLiquidsException;
import org.satline.filling.CylinderSpecification;
import org.satline.filling.CylinderStamps;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.StandardUncertainty;
import org.satline.measurement.SystemReadings;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Density;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Length;
import org.satline.quantity.Mass;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Power;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.quantity.Volume;
import org.satline.quantity.VolumeFlow;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Composition;
import org.satline.refrigerant.Refrigerant;
import org.satline.refrigerant.UnknownRefrigerantException;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.saturation.SaturationProperty;
import org.satline.saturation.SaturationUncertainty;

/** What a caller may get wrong, row by row: what is called, and the type that must come back. */
class MisuseTest {
    private static final double NAN = Double.NaN;
    private static final double INFINITE = Double.POSITIVE_INFINITY;
    private static final Catalogue CATALOGUE = Catalogue.standard();
    private static final Refrigerant R32 = CATALOGUE.find("R-32");
    private static final Refrigerant R125 = CATALOGUE.find("R-125");
    private static final SaturationCurve CURVE = SaturationCurves.solving(R32);
    private static final FluidModel MODEL = FluidModel.of(R32);
    private static final Atmosphere SITE = Atmosphere.standard();

    static Stream<MisuseCase> all() {
        return Stream.of(quantities(), texts(), refrigerants(), states(), readings(), cylinders())
                .flatMap(List::stream);
    }

    @ParameterizedTest
    @MethodSource("all")
    void isRefusedWithItsType(MisuseCase row) {
        assertThatThrownBy(row.call()).isInstanceOf(row.expected()).hasMessageMatching("(?s).+");
    }

    @Test
    void theTableIsLong() {
        assertThat(all().map(MisuseCase::called).distinct().count()).isGreaterThan(200);
    }

    private static List<MisuseCase> quantities() {
        return new MisuseCase.Rows()
                .numbers("Temperature.ofKelvins", Temperature::ofKelvins, NAN, INFINITE, -INFINITE, 0, -1)
                .numbers("Temperature.ofCelsius", Temperature::ofCelsius, NAN, INFINITE, -273.15, -300)
                .numbers("Temperature.ofFahrenheit", Temperature::ofFahrenheit, NAN, -INFINITE, -459.67, -500)
                .numbers("TemperatureDifference.ofKelvins", TemperatureDifference::ofKelvins, NAN, INFINITE, -INFINITE)
                .numbers(
                        "TemperatureDifference.ofFahrenheitDegrees",
                        TemperatureDifference::ofFahrenheitDegrees,
                        NAN,
                        INFINITE)
                .numbers("Pressure.ofPascals", Pressure::ofPascals, NAN, INFINITE, -1)
                .numbers("Pressure.ofKilopascals", Pressure::ofKilopascals, NAN, INFINITE, -1)
                .numbers("Pressure.ofBars", Pressure::ofBars, NAN, INFINITE, -1)
                .numbers("Pressure.ofPsia", Pressure::ofPsia, NAN, INFINITE, -1)
                .numbers("Pressure.ofMicrons", Pressure::ofMicrons, NAN, INFINITE, -1)
                .numbers("GaugePressure.ofPascals", GaugePressure::ofPascals, NAN, INFINITE)
                .numbers("GaugePressure.ofPsig", GaugePressure::ofPsig, NAN, -INFINITE)
                .numbers("PressureDifference.ofPsi", PressureDifference::ofPsi, NAN, INFINITE)
                .numbers("Mass.ofKilograms", Mass::ofKilograms, NAN, INFINITE, -1)
                .numbers("Mass.ofPounds", Mass::ofPounds, NAN, INFINITE, -0.1)
                .numbers("Mass.ofOunces", Mass::ofOunces, NAN, -1)
                .numbers("Volume.ofLitres", Volume::ofLitres, NAN, INFINITE, -1)
                .numbers("VolumeFlow.ofCubicFeetPerMinute", VolumeFlow::ofCubicFeetPerMinute, NAN, INFINITE)
                .numbers("Density.ofKilogramsPerCubicMetre", Density::ofKilogramsPerCubicMetre, NAN, INFINITE, -1)
                .numbers("Power.ofKilowatts", Power::ofKilowatts, NAN, INFINITE)
                .numbers("Length.ofMetres", Length::ofMetres, NAN, INFINITE)
                .refuses(
                        "a gauge pressure below no pressure",
                        () -> Pressure.ofGauge(GaugePressure.ofPascals(-200_000), SITE))
                .refuses("an atmosphere at 100 km", () -> Atmosphere.atAltitude(Length.ofMetres(100_000)))
                .refuses("an atmosphere at -10 km", () -> Atmosphere.atAltitude(Length.ofMetres(-10_000)))
                .refuses("an atmosphere of 10 kPa", () -> Atmosphere.measured(Pressure.ofKilopascals(10)))
                .refuses("an atmosphere of 200 kPa", () -> Atmosphere.measured(Pressure.ofKilopascals(200)))
                .all();
    }

    private static List<MisuseCase> texts() {
        return new MisuseCase.Rows()
                .texts(
                        "Temperature.parse",
                        Temperature::parse,
                        "",
                        "53",
                        "53 degZ",
                        "degF",
                        "5,3 degF",
                        "NaN K",
                        "-1 K")
                .texts("Temperature.parse", Temperature::parse, "53 psig", "1e999 K", "53 degF x", "Infinity K")
                .texts("TemperatureDifference.parse", TemperatureDifference::parse, "", "10", "10 bar", "NaN K")
                .texts("Pressure.parse", Pressure::parse, "", "118", "118 psig", "118 degF", "-3 kPa", "1,2 bar")
                .texts("Pressure.parse, site", text -> Pressure.parse(text, SITE), "", "118", "-500 psig", "x psig")
                .texts("Mass.parse", Mass::parse, "", "10", "10 m", "-1 kg", "ten kg", "1e400 kg")
                .texts("Volume.parse", Volume::parse, "", "10", "10 kg", "-2 l")
                .texts("Length.parse", Length::parse, "", "310", "310 kg")
                .texts("Power.parse", Power::parse, "", "3", "3 K")
                .texts("GaugePressure.parse", GaugePressure::parse, "", "118", "118 kg")
                .texts("MeteringDevice.ofLabel", MeteringDevice::ofLabel, "", "txv", "EXPANSION_VALVE", "piston")
                .texts("CylinderSpecification.parse", CylinderSpecification::parse, "", " ")
                .all();
    }

    private static List<MisuseCase> refrigerants() {
        Map<Refrigerant, Double> half = Map.of(R32, 0.5, R125, 0.5);
        Refrigerant open = CATALOGUE.find("R-400");
        Refrigerant own = Refrigerant.substance("Field 7", "as on the cylinder", 0.1, "the cylinder");
        return new MisuseCase.Rows()
                .refuses("find(\"\")", UnknownRefrigerantException.class, () -> CATALOGUE.find(""))
                .refuses("find(\"R-9999\")", UnknownRefrigerantException.class, () -> CATALOGUE.find("R-9999"))
                .refuses("find(\"R-410Z\")", UnknownRefrigerantException.class, () -> CATALOGUE.find("R-410Z"))
                .refuses("find(two at once)", UnknownRefrigerantException.class, () -> CATALOGUE.find("R-32, R-125"))
                .refuses("find(null)", NullPointerException.class, () -> CATALOGUE.find(null))
                .refuses("composition of an open blend", open::composition)
                .refuses("curve of an open blend", () -> SaturationCurves.of(open))
                .refuses("curve without an equation", MissingEquationException.class, () -> SaturationCurves.of(own))
                .refuses("model without an equation", MissingEquationException.class, () -> FluidModel.of(own))
                .refuses("curve of null", NullPointerException.class, () -> SaturationCurves.of(null))
                .refuses("fractions in per cent", () -> Composition.ofMassFractions(Map.of(R32, 50.0, R125, 50.0)))
                .refuses(
                        "fractions that miss the whole", () -> Composition.ofMassFractions(Map.of(R32, 0.5, R125, 0.4)))
                .refuses("a fraction of 0", () -> Composition.ofMassFractions(Map.of(R32, 1.0, R125, 0.0)))
                .refuses("a fraction below 0", () -> Composition.ofMoleFractions(Map.of(R32, 1.1, R125, -0.1)))
                .refuses("a fraction that is NaN", () -> Composition.ofMoleFractions(Map.of(R32, NAN, R125, 0.5)))
                .refuses("no fractions", () -> Composition.ofMassFractions(Map.of()))
                .refuses(
                        "a blend in a blend",
                        () -> Composition.ofMassFractions(Map.of(CATALOGUE.find("R-410A"), 0.5, R32, 0.5)))
                .refuses(
                        "a blend by a listed name", () -> Refrigerant.blend("r410a", Composition.ofMassFractions(half)))
                .refuses("a blend without a name", () -> Refrigerant.blend(" ", Composition.ofMassFractions(half)))
                .refuses("a blend by two lines", () -> Refrigerant.blend("a\nb", Composition.ofMassFractions(half)))
                .refuses("a substance by a listed name", () -> Refrigerant.substance("R-32", "x", 0.05, "x"))
                .refuses("a molar mass in g/mol", () -> Refrigerant.substance("Field 8", "x", 52, "x"))
                .refuses("a molar mass of NaN", () -> Refrigerant.substance("Field 8", "x", NAN, "x"))
                .refuses("a molar mass of 0", () -> Refrigerant.substance("Field 8", "x", 0, "x"))
                .refuses("an entry that is listed", () -> CATALOGUE.with(List.of(R32)))
                .refuses(
                        "a mixture of nothing",
                        () -> EquationLibrary.standard().mixture(List.of(), InteractionModel.PUBLISHED_ONLY))
                .refuses(
                        "a mixture of one twice",
                        () -> EquationLibrary.standard()
                                .mixture(List.of("R-32", "R-32"), InteractionModel.PUBLISHED_ONLY))
                .refuses(
                        "an equation by another spelling",
                        MissingEquationException.class,
                        () -> EquationLibrary.standard().pure("r-32"))
                .refuses(
                        "water with a halocarbon",
                        TwoLiquidsException.class,
                        () -> FluidModel.of(Refrigerant.blend(
                                "wet", Composition.ofMassFractions(Map.of(R32, 0.5, CATALOGUE.find("R-718"), 0.5)))))
                .all();
    }

    private static List<MisuseCase> states() {
        Class<OutOfValidityException> outside = OutOfValidityException.class;
        MisuseCase.Rows rows = new MisuseCase.Rows();
        for (SaturationProperty property : SaturationProperty.values()) {
            for (double wrong : new double[] {NAN, INFINITE, 0, -1, 1e12}) {
                rows.refuses(property.words() + " at " + wrong, outside, () -> CURVE.value(property, wrong));
            }
        }
        SaturationUncertainty doubt = SaturationUncertainty.of(R32);
        return rows.refuses("30 psi given as Pa", outside, () -> CURVE.dewTemperatureK(30))
                .refuses("degC given as K", outside, () -> CURVE.dewPressurePa(12))
                .refuses(
                        "a temperature above the critical",
                        outside,
                        () -> CURVE.bubblePressure(Temperature.ofCelsius(90)))
                .refuses(
                        "an output that is too short",
                        () -> CURVE.values(SaturationProperty.DEW_PRESSURE, new double[3], new double[2]))
                .refuses("columns of two lengths", () -> CURVE.superheats(new double[3], new double[2]))
                .refuses("values of null", NullPointerException.class, () -> CURVE.superheat(null, null))
                .refuses("state at NaN, p", outside, () -> MODEL.stateAt(NAN, 1e5))
                .refuses("state at T, NaN", outside, () -> MODEL.stateAt(300, NAN))
                .refuses("state at 0 K", outside, () -> MODEL.stateAt(0, 1e5))
                .refuses("state at -1 Pa", outside, () -> MODEL.stateAt(300, -1))
                .refuses("state at 2000 K", outside, () -> MODEL.stateAt(2000, 1e5))
                .refuses("split at no density", () -> MODEL.states().atTemperatureAndDensity(300, 0))
                .refuses("split at a density of NaN", () -> MODEL.states().atTemperatureAndDensity(300, NAN))
                .refuses("vapour fraction 50", outside, () -> MODEL.states().atPressureAndVapourFraction(1e6, 50.0))
                .refuses("vapour fraction NaN", outside, () -> MODEL.states().atPressureAndVapourFraction(1e6, NAN))
                .refuses("enthalpy of NaN", () -> MODEL.states().atPressureAndEnthalpy(1e6, NAN))
                .refuses("entropy of NaN", () -> MODEL.states().atPressureAndEntropy(1e6, NAN))
                .refuses("uncertainty above the line", outside, () -> doubt.bubblePressure(Temperature.ofCelsius(90)))
                .all();
    }

    private static List<MisuseCase> readings() {
        Pressure low = Pressure.ofPascals(915_000);
        Pressure high = Pressure.ofPascals(2_618_000);
        Temperature line = Temperature.ofKelvins(290);
        ChargeQuestion question = ChargeQuestion.of(MeteringDevice.EXPANSION_VALVE, Optional.empty());
        SystemReadings swapped = SystemReadings.builder()
                .suction(Reading.exact(high), Reading.exact(line))
                .liquid(Reading.exact(low), Reading.exact(line))
                .build();
        SystemReadings outside = SystemReadings.builder()
                .suction(Reading.exact(Pressure.ofPascals(9e6)), Reading.exact(line))
                .build();
        return new MisuseCase.Rows()
                .numbers("UncertaintyBudget.of", u -> UncertaintyBudget.of("x", u), NAN, INFINITE, -1)
                .numbers("UncertaintyBudget.ofExpanded", u -> UncertaintyBudget.ofExpanded("x", u), NAN, -1)
                .numbers(
                        "UncertaintyBudget.scaled",
                        c -> UncertaintyBudget.of("x", 1).scaled(c),
                        NAN,
                        INFINITE)
                .numbers("Reading.of", u -> Reading.of(line, u, "x"), NAN, INFINITE, -1)
                .numbers("StandardUncertainty.ofLimits", StandardUncertainty::ofLimits, NAN, INFINITE, -1)
                .numbers("StandardUncertainty.ofExpanded", k -> StandardUncertainty.ofExpanded(1, k), NAN, 0, -2)
                .refuses("a mean of one reading", () -> StandardUncertainty.ofMean(1))
                .refuses(
                        "a temperature where a pressure stands",
                        () -> SystemReadings.builder().put(Place.SUCTION_PRESSURE, Reading.exact(line)))
                .refuses(
                        "a pressure where a temperature stands",
                        () -> SystemReadings.builder().put(Place.SUCTION_LINE, Reading.exact(low)))
                .refuses(
                        "a drop below 0",
                        () -> SystemReadings.builder()
                                .put(Place.SUCTION_DROP, Reading.exact(PressureDifference.ofPascals(-1))))
                .refuses(
                        "a reading of null",
                        NullPointerException.class,
                        () -> SystemReadings.builder().put(Place.SUCTION_LINE, null))
                .numbers(
                        "target superheat",
                        k -> ChargeQuestion.of(
                                MeteringDevice.FIXED_ORIFICE, Optional.of(TemperatureDifference.ofKelvins(k))),
                        -1,
                        50.1,
                        300)
                .numbers("producer's risk", r -> ChargeJudge.usual().accepting(r, 0.05), NAN, 0, -1, 0.5, 5)
                .numbers("consumer's risk", r -> ChargeScreen.of(CURVE).accepting(0.05, r), NAN, 0, -1, 0.5, 95)
                .refuses(
                        "gauges swapped",
                        ImplausibleReadingException.class,
                        () -> ChargeJudge.usual()
                                .judge(new ChargeCase(CURVE, swapped, question, OperatingConditions.unknown())))
                .refuses("a pressure outside the curve", OutOfValidityException.class, () -> Margins.of(CURVE, outside))
                .refuses(
                        "a row with another's curve",
                        () -> ChargeRow.of(R125, MeteringDevice.FIXED_ORIFICE)
                                .build()
                                .chargeCase(CURVE))
                .refuses(
                        "a row of no refrigerant",
                        NullPointerException.class,
                        () -> ChargeRow.of(null, MeteringDevice.FIXED_ORIFICE))
                .refuses("a screen without lines", NullPointerException.class, () -> ChargeScreen.of(null))
                .refuses(
                        "a case without a curve",
                        NullPointerException.class,
                        () -> new ChargeCase(null, swapped, question, OperatingConditions.unknown()))
                .all();
    }

    private static List<MisuseCase> cylinders() {
        Mass tare = Mass.ofPounds(26);
        return new MisuseCase.Rows()
                .refuses("no water capacity", () -> CylinderStamps.of(tare, Mass.ZERO))
                .refuses("a tare of null", NullPointerException.class, () -> CylinderStamps.of(null, tare))
                .refuses("a capacity of null", NullPointerException.class, () -> CylinderStamps.of(tare, (Volume) null))
                .all();
    }
}

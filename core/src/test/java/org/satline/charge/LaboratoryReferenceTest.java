package org.satline.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.satline.charge.belief.Fault;
import org.satline.charge.margin.ChargeLevel;
import org.satline.charge.margin.Criterion;
import org.satline.charge.margin.MeteringDevice;
import org.satline.measurement.DigitalGauge;
import org.satline.measurement.Place;
import org.satline.measurement.SystemReadings;
import org.satline.measurement.Thermometer;
import org.satline.measurement.ThermometerClass;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Catalogue;
import org.satline.resource.CsvResource;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/**
 * The verdict on measured machines; sources at the head of {@code laboratory.csv}. Instruments: the usual clamps and
 * digital gauges.
 */
class LaboratoryReferenceTest {
    /**
     * Mean subcooling of the campaign's fault-free conditions at its one charge (NISTIR 7350): what a maker would
     * print.
     */
    private static final double TARGET_K = 4.4;

    static List<CsvResource.Row> rows() throws IOException {
        try (InputStream in =
                Objects.requireNonNull(LaboratoryReferenceTest.class.getResourceAsStream("laboratory.csv"))) {
            return CsvResource.parse(
                            "laboratory.csv",
                            in.readAllBytes(),
                            "source",
                            "refrigerant",
                            "metering",
                            "fault",
                            "outdoor_C",
                            "return_C",
                            "return_wet_bulb_C",
                            "supply_C",
                            "suction_kPa",
                            "suction_line_C",
                            "liquid_kPa",
                            "liquid_line_C",
                            "discharge_C",
                            "superheat_K",
                            "subcooling_K",
                            "evaporating_C",
                            "condensing_C")
                    .rows();
        }
    }

    static List<CsvResource.Row> soundSplit() throws IOException {
        return rows().stream()
                .filter(row -> row.text("source").equals("nistir-7350"))
                .toList();
    }

    static List<CsvResource.Row> weakFans() throws IOException {
        return rows().stream().filter(row -> !row.text("fault").equals("none")).toList();
    }

    /**
     * Saturation as the laboratory computed it. Its subcooling agrees with its liquid pressure and temperature to 0.15 K as read from the
     * source; twice that. Its evaporating temperature is that of the evaporator outlet, where the pressure stands some 0.7 % above the
     * vapour inlet, which is 0.25 K.
     */
    @ParameterizedTest
    @MethodSource("soundSplit")
    void saturationIsThatOfTheLaboratory(CsvResource.Row row) {
        SaturationCurve curve = curve(row);
        assertThat(curve.dewTemperatureK(1000 * row.number("suction_kPa")) - 273.15)
                .isCloseTo(row.number("evaporating_C"), within(0.45));
        double subcooling =
                curve.bubbleTemperatureK(1000 * row.number("liquid_kPa")) - 273.15 - row.number("liquid_line_C");
        assertThat(subcooling).isCloseTo(row.number("subcooling_K"), within(0.3));
    }

    /**
     * Sixteen conditions, one charge, nothing wrong: neither the charge nor a fault is called, whatever the weather.
     */
    @ParameterizedTest
    @MethodSource("soundSplit")
    void aSoundMachineIsLeftAlone(CsvResource.Row row) {
        Judgement judgement = judge(row, TARGET_K);
        assertThat(judgement)
                .isInstanceOfSatisfying(
                        Judgement.Decided.class,
                        found -> assertThat(found.level()).isEqualTo(ChargeLevel.ON_TARGET));
        assertThat(judgement.evidence().gates())
                .filteredOn(gate -> gate.kind() == Gate.Kind.AIRFLOW)
                .allSatisfy(gate -> assertThat(gate.state()).isNotEqualTo(Gate.State.NOT_MET));
        for (Fault fault : Fault.values()) {
            assertThat(judgement.evidence().weighed().belief().probability(fault))
                    .as("%s", fault)
                    .isLessThan(0.5);
        }
    }

    /**
     * A weak fan on either side, measured: never charge advice. Its own sound run is the target where the weather has
     * none.
     */
    @ParameterizedTest
    @MethodSource("weakFans")
    void aWeakFanIsNoErrorOfTheCharge(CsvResource.Row row) throws IOException {
        double target = soundTarget(row);
        Judgement judgement = judge(row, target);
        assertThat(judgement)
                .as("%s", judgement.label())
                .satisfiesAnyOf(
                        it -> assertThat(it).isNotInstanceOf(Judgement.Decided.class),
                        it -> assertThat(((Judgement.Decided) it).level()).isEqualTo(ChargeLevel.ON_TARGET));
    }

    private static double soundTarget(CsvResource.Row of) throws IOException {
        for (CsvResource.Row row : rows()) {
            if (row.text("source").equals(of.text("source"))
                    && row.text("metering").equals(of.text("metering"))
                    && row.text("fault").equals("none")) {
                SaturationCurve curve = curve(row);
                return MeteringDevice.ofLabel(row.text("metering")).judgedBy() == Criterion.SUPERHEAT
                        ? row.number("suction_line_C")
                                + 273.15
                                - curve.dewTemperatureK(1000 * row.number("suction_kPa"))
                        : row.isEmpty("liquid_kPa")
                                ? 5.6
                                : curve.bubbleTemperatureK(1000 * row.number("liquid_kPa"))
                                        - 273.15
                                        - row.number("liquid_line_C");
            }
        }
        throw new IllegalStateException("no sound run");
    }

    private static SaturationCurve curve(CsvResource.Row row) {
        return SaturationCurves.of(Catalogue.standard().find(row.text("refrigerant")));
    }

    private static Judgement judge(CsvResource.Row row, double targetK) {
        return ChargeJudge.usual()
                .judge(new ChargeCase(
                        curve(row),
                        readings(row),
                        ChargeQuestion.of(
                                MeteringDevice.ofLabel(row.text("metering")),
                                Optional.of(TemperatureDifference.ofKelvins(targetK))),
                        OperatingConditions.unknown().withOutdoorMinimumMet(true)));
    }

    private static SystemReadings readings(CsvResource.Row row) {
        DigitalGauge gauge = new DigitalGauge("gauge", 0.5, PressureDifference.ofPsi(0.5));
        Thermometer thermometer = new Thermometer("thermometer", ThermometerClass.named("thermocouple-k-class-1"), 0.1);
        SystemReadings.Builder builder = SystemReadings.builder();
        List<Place> pressures = new ArrayList<>(List.of(Place.SUCTION_PRESSURE, Place.LIQUID_PRESSURE));
        for (Place place : pressures) {
            String column = place == Place.SUCTION_PRESSURE ? "suction_kPa" : "liquid_kPa";
            if (!row.isEmpty(column)) {
                Pressure absolute = Pressure.ofKilopascals(row.number(column));
                builder.put(
                        place,
                        gauge.read(
                                GaugePressure.ofPascals(absolute.pascals()
                                        - Atmosphere.standard().pressure().pascals()),
                                Atmosphere.standard()));
            }
        }
        put(builder, row, "suction_line_C", Place.SUCTION_LINE, thermometer, 0.5);
        put(builder, row, "liquid_line_C", Place.LIQUID_LINE, thermometer, 0.5);
        put(builder, row, "discharge_C", Place.DISCHARGE_LINE, thermometer, 0.5);
        put(builder, row, "outdoor_C", Place.OUTDOOR_AIR, thermometer, 0);
        put(builder, row, "return_C", Place.RETURN_DRY_BULB, thermometer, 0);
        put(builder, row, "return_wet_bulb_C", Place.RETURN_WET_BULB, thermometer, 0);
        put(builder, row, "supply_C", Place.SUPPLY_DRY_BULB, thermometer, 0);
        return builder.build();
    }

    private static void put(
            SystemReadings.Builder builder,
            CsvResource.Row row,
            String column,
            Place place,
            Thermometer thermometer,
            double contactK) {
        if (!row.isEmpty(column)) {
            Temperature shown = Temperature.ofCelsius(row.number(column));
            builder.put(
                    place,
                    contactK > 0
                            ? thermometer.readOnPipe(shown, place.field(), contactK)
                            : thermometer.read(shown, place.field()));
        }
    }
}

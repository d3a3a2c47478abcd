package org.satline.charge;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.satline.charge.margin.MeteringDevice;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.FindingCode;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.quantity.UnitSystem;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/**
 * A running R-410A system at about 118 and 365 psig, 76 degF dry bulb and 64 degF wet bulb indoors, 85 degF outdoors,
 * and alterations of
 * it. Immutable.
 */
record Case(
        SaturationCurve curve,
        SystemReadings readings,
        ChargeQuestion question,
        OperatingConditions conditions,
        double standardUncertaintyK) {
    private static final Wording WORDING = Wording.of(Language.ENGLISH, UnitSystem.US);
    static final SaturationCurve R410A =
            SaturationCurves.solving(Catalogue.standard().find("R-410A"));
    static final Pressure SUCTION = Pressure.ofPascals(915_000);
    static final Pressure LIQUID = Pressure.ofPascals(2_618_000);

    /** Subcooling against a target of 10 degF; exact gauges, and lines so far from saturation as is said. */
    static Case valve(double superheatF, double subcoolingF, double uK) {
        return of(MeteringDevice.EXPANSION_VALVE, superheatF, subcoolingF, uK)
                .target(Optional.of(TemperatureDifference.ofFahrenheitDegrees(10)));
    }

    /** Superheat against the chart, 11 degF at 64 degF wet bulb and 85 degF outdoors. */
    static Case orifice(double superheatF, double subcoolingF, double uK) {
        return of(MeteringDevice.FIXED_ORIFICE, superheatF, subcoolingF, uK);
    }

    private static Case of(MeteringDevice metering, double superheatF, double subcoolingF, double uK) {
        SystemReadings none = SystemReadings.builder().build();
        ChargeQuestion question = ChargeQuestion.of(metering, Optional.empty());
        return new Case(R410A, none, question, OperatingConditions.unknown(), uK)
                .put(Place.SUCTION_PRESSURE, Reading.exact(SUCTION))
                .put(Place.LIQUID_PRESSURE, Reading.exact(LIQUID))
                .degF(Place.SUCTION_LINE, R410A.dewTemperature(SUCTION).fahrenheit() + superheatF)
                .degF(Place.LIQUID_LINE, R410A.bubbleTemperature(LIQUID).fahrenheit() - subcoolingF)
                .degF(Place.RETURN_WET_BULB, 64)
                .degF(Place.RETURN_DRY_BULB, 76)
                .degF(Place.OUTDOOR_AIR, 85);
    }

    Case put(Place place, Reading<?> reading) {
        return with(readings.toBuilder().put(place, reading).build());
    }

    Case degF(Place place, double fahrenheit) {
        return put(
                place,
                Reading.of(Temperature.ofFahrenheit(fahrenheit), standardUncertaintyK, place.field() + " probe"));
    }

    Case without(Place... places) {
        SystemReadings.Builder builder = readings.toBuilder();
        for (Place place : places) {
            builder.without(place);
        }
        return with(builder.build());
    }

    private Case with(SystemReadings changed) {
        return new Case(curve, changed, question, conditions, standardUncertaintyK);
    }

    Case target(Optional<TemperatureDifference> target) {
        return new Case(
                curve, readings, ChargeQuestion.of(question.metering(), target), conditions, standardUncertaintyK);
    }

    Case under(OperatingConditions changed) {
        return new Case(curve, readings, question, changed, standardUncertaintyK);
    }

    /** At rest at 25 degC, so much over saturation. */
    Case standing(double overPa, double uPa) {
        Temperature all = Temperature.ofCelsius(25);
        return under(conditions.withStanding(new OperatingConditions.Standing(
                Reading.of(Pressure.ofPascals(curve.bubblePressurePa(all.kelvins()) + overPa), uPa, "gauge at rest"),
                Reading.exact(all))));
    }

    Case running(Duration time) {
        return under(new OperatingConditions(
                Optional.of(time),
                conditions.settled(),
                conditions.watchedSettled(),
                conditions.outdoorMinimumMet(),
                conditions.airflow(),
                conditions.standing()));
    }

    ChargeCase made() {
        return new ChargeCase(curve, readings, question, conditions);
    }

    /** The judgement, all of which can be put into words. */
    Judgement judged() {
        Judgement judgement = ChargeJudge.usual().judge(made());
        judgement
                .evidence()
                .findings()
                .forEach(finding ->
                        assertThat(WORDING.lacking(finding)).as("%s", finding).isEmpty());
        judgement
                .evidence()
                .gates()
                .forEach(gate -> assertThat(
                                WORDING.message(gate.textKey(), gate.figures().toArray(Figure[]::new)))
                        .contains(" ")
                        .doesNotContain(WORDING.message("figure.absent")));
        return judgement;
    }

    Gate gate(Gate.Kind kind) {
        return judged().evidence().gates().stream()
                .filter(gate -> gate.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    static Set<FindingCode> codes(Judgement judgement) {
        return judgement.evidence().findings().stream().map(Finding::code).collect(Collectors.toSet());
    }
}

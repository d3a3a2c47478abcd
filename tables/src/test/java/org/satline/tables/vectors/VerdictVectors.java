package org.satline.tables.vectors;

import static org.satline.charge.margin.MeteringDevice.EXPANSION_VALVE;
import static org.satline.charge.margin.MeteringDevice.FIXED_ORIFICE;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.satline.charge.ChargeCase;
import org.satline.charge.ChargeJudge;
import org.satline.charge.ChargeQuestion;
import org.satline.charge.Judgement;
import org.satline.charge.OperatingConditions;
import org.satline.charge.margin.ChargeLevel;
import org.satline.charge.margin.Criterion;
import org.satline.charge.margin.MeteringDevice;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** Levels of charge of systems from far too low to far too high, by both metering devices, with good and with poor instruments. */
final class VerdictVectors {
    static final String HEADER =
            "id,refrigerant,metering,suction_pressure_Pa,suction_line_K,liquid_pressure_Pa,liquid_line_K,"
                    + "return_wet_bulb_K,condenser_air_K,target_superheat_K,target_subcooling_K,pressure_standard_uncertainty_Pa,"
                    + "temperature_standard_uncertainty_K,superheat_K,subcooling_K,probability_low,probability_on_target,probability_high,level";

    private static final double EVAPORATING_K = 278.15;
    private static final double CONDENSING_K = 318.15;
    private static final double OUTDOOR_K = 308.15;

    private VerdictVectors() {}

    static List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (String name : List.of("R-22", "R-32", "R-407C", "R-410A", "R-454B")) {
            for (double off : new double[] {-5, -2.5, -1, 0, 1, 2.5, 5}) {
                for (double uncertainty : new double[] {0.2, 1.0}) {
                    for (MeteringDevice metering : List.of(EXPANSION_VALVE, FIXED_ORIFICE)) {
                        lines.add(line("v" + (lines.size() + 1), name, metering, off, uncertainty));
                    }
                }
            }
        }
        return lines;
    }

    private static String line(String id, String name, MeteringDevice metering, double off, double uncertainty) {
        SaturationCurve curve = SaturationCurves.solving(Catalogue.standard().find(name));
        boolean valve = metering == EXPANSION_VALVE;
        double suction = Math.rint(curve.dewPressurePa(EVAPORATING_K));
        double liquid = Math.rint(curve.bubblePressurePa(CONDENSING_K));
        double suctionLine = EVAPORATING_K + (valve ? 6 : 8 - 2 * off);
        double liquidLine = CONDENSING_K - (valve ? 5.5 + off : 5 + off);
        double target = valve ? 5.5 : 8;
        double pressureUncertainty = uncertainty * 10e3;
        Judgement judgement = ChargeJudge.usual()
                .judge(new ChargeCase(
                        curve,
                        SystemReadings.builder()
                                .put(Place.SUCTION_PRESSURE, pressure(suction, pressureUncertainty, "suction gauge"))
                                .put(Place.LIQUID_PRESSURE, pressure(liquid, pressureUncertainty, "liquid gauge"))
                                .put(
                                        Place.SUCTION_LINE,
                                        temperature(suctionLine, uncertainty, "suction-line thermometer"))
                                .put(Place.LIQUID_LINE, temperature(liquidLine, uncertainty, "liquid-line thermometer"))
                                .put(
                                        Place.OUTDOOR_AIR,
                                        temperature(OUTDOOR_K, uncertainty, "condenser-air thermometer"))
                                .build(),
                        new ChargeQuestion(
                                metering, Optional.of(TemperatureDifference.ofKelvins(target)), Optional.empty()),
                        OperatingConditions.unknown()));
        Judgement.Evidence evidence = judgement.evidence();
        OptionalDouble none = OptionalDouble.empty();
        return String.join(
                ",",
                id,
                name,
                metering.label(),
                PropertyVectors.cell(OptionalDouble.of(suction)),
                PropertyVectors.cell(OptionalDouble.of(suctionLine)),
                PropertyVectors.cell(OptionalDouble.of(liquid)),
                PropertyVectors.cell(OptionalDouble.of(liquidLine)),
                "",
                PropertyVectors.cell(OptionalDouble.of(OUTDOOR_K)),
                PropertyVectors.cell(valve ? none : OptionalDouble.of(target)),
                PropertyVectors.cell(valve ? OptionalDouble.of(target) : none),
                PropertyVectors.cell(OptionalDouble.of(pressureUncertainty)),
                PropertyVectors.cell(OptionalDouble.of(uncertainty)),
                margin(evidence, Criterion.SUPERHEAT),
                margin(evidence, Criterion.SUBCOOLING),
                probability(evidence, ChargeLevel.LOW),
                probability(evidence, ChargeLevel.ON_TARGET),
                probability(evidence, ChargeLevel.HIGH),
                judgement.label());
    }

    private static Reading<Pressure> pressure(double pascals, double standardUncertaintyPa, String origin) {
        return Reading.of(Pressure.ofPascals(pascals), standardUncertaintyPa, origin);
    }

    private static Reading<Temperature> temperature(double kelvins, double standardUncertaintyK, String origin) {
        return Reading.of(Temperature.ofKelvins(kelvins), standardUncertaintyK, origin);
    }

    private static String margin(Judgement.Evidence evidence, Criterion criterion) {
        return evidence.margins()
                .get(criterion)
                .map(margin -> fixed(margin.value().kelvins()))
                .orElse("");
    }

    private static String probability(Judgement.Evidence evidence, ChargeLevel level) {
        return evidence.deviation()
                .map(deviation -> fixed(deviation.probability(level)))
                .orElse("");
    }

    private static String fixed(double value) {
        return String.format(Locale.ROOT, "%.6f", value);
    }
}

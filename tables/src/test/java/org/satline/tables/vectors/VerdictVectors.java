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
import org.satline.charge.margin.ImplausibleReadingException;
import org.satline.charge.margin.MeteringDevice;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/**
 * Levels of charge of systems from far too low to far too high, by both metering devices, with good and with poor instruments, by the
 * maker's target and by the air; other faults than the charge; and readings that give no level.
 */
final class VerdictVectors {
    private static final String ASKED =
            "id,refrigerant,metering,suction_pressure_Pa,suction_line_K,liquid_pressure_Pa,liquid_line_K,"
                    + "return_wet_bulb_K,condenser_air_K,target_superheat_K,target_subcooling_K,pressure_standard_uncertainty_Pa,"
                    + "temperature_standard_uncertainty_K";
    static final String HEADER = ASKED
            + ",superheat_K,subcooling_K,judged_against_K,probability_low,probability_on_target,probability_high,fault,level";

    static final String REFUSALS = ASKED + ",error";

    private static final double EVAPORATING_K = 278.15;
    private static final double CONDENSING_K = 318.15;
    private static final double OUTDOOR_K = 308.15;
    private static final List<String> REFRIGERANTS = List.of("R-22", "R-32", "R-407C", "R-410A", "R-454B");

    /** A system by its readings, absolute. */
    private record Readings(
            String refrigerant,
            MeteringDevice metering,
            double suctionPa,
            double suctionLineK,
            double liquidPa,
            double liquidLineK,
            OptionalDouble wetBulbK,
            OptionalDouble outdoorK,
            OptionalDouble target,
            double uncertaintyK) {

        /** With superheat and subcooling as they are read, by the maker's target. */
        static Readings of(String name, MeteringDevice metering, double superheat, double subcooling, double target) {
            SaturationCurve curve = curve(name);
            return new Readings(
                    name,
                    metering,
                    Math.rint(curve.dewPressurePa(EVAPORATING_K)),
                    EVAPORATING_K + superheat,
                    Math.rint(curve.bubblePressurePa(CONDENSING_K)),
                    CONDENSING_K - subcooling,
                    OptionalDouble.empty(),
                    OptionalDouble.of(OUTDOOR_K),
                    OptionalDouble.of(target),
                    0.2);
        }

        Readings uncertain(double kelvins) {
            return new Readings(
                    refrigerant,
                    metering,
                    suctionPa,
                    suctionLineK,
                    liquidPa,
                    liquidLineK,
                    wetBulbK,
                    outdoorK,
                    target,
                    kelvins);
        }

        /** A fixed orifice by the chart, degF. */
        Readings inAir(double wetBulb, double outdoor) {
            return new Readings(
                    refrigerant,
                    FIXED_ORIFICE,
                    suctionPa,
                    suctionLineK,
                    liquidPa,
                    liquidLineK,
                    OptionalDouble.of(Temperature.ofFahrenheit(wetBulb).kelvins()),
                    OptionalDouble.of(Temperature.ofFahrenheit(outdoor).kelvins()),
                    OptionalDouble.empty(),
                    uncertaintyK);
        }

        Readings at(double suction, double suctionLine, double liquid, double liquidLine) {
            return new Readings(
                    refrigerant,
                    metering,
                    suction,
                    suctionLine,
                    liquid,
                    liquidLine,
                    wetBulbK,
                    outdoorK,
                    target,
                    uncertaintyK);
        }

        double pressureUncertainty() {
            return uncertaintyK * 10e3;
        }

        Judgement judged() {
            SystemReadings.Builder builder = SystemReadings.builder()
                    .put(Place.SUCTION_PRESSURE, pressure(suctionPa, pressureUncertainty(), "suction gauge"))
                    .put(Place.LIQUID_PRESSURE, pressure(liquidPa, pressureUncertainty(), "liquid gauge"))
                    .put(Place.SUCTION_LINE, temperature(suctionLineK, uncertaintyK, "suction-line thermometer"))
                    .put(Place.LIQUID_LINE, temperature(liquidLineK, uncertaintyK, "liquid-line thermometer"));
            if (outdoorK.isPresent()) {
                builder.put(
                        Place.OUTDOOR_AIR,
                        temperature(outdoorK.getAsDouble(), uncertaintyK, "condenser-air thermometer"));
            }
            if (wetBulbK.isPresent()) {
                builder.put(
                        Place.RETURN_WET_BULB,
                        temperature(wetBulbK.getAsDouble(), uncertaintyK, "wet-bulb thermometer"));
            }
            Optional<TemperatureDifference> makers = target.isPresent()
                    ? Optional.of(TemperatureDifference.ofKelvins(target.getAsDouble()))
                    : Optional.empty();
            return ChargeJudge.usual()
                    .judge(new ChargeCase(
                            curve(refrigerant),
                            builder.build(),
                            new ChargeQuestion(metering, makers, Optional.empty()),
                            OperatingConditions.unknown()));
        }

        String cells() {
            boolean valve = metering == EXPANSION_VALVE;
            return String.join(
                    ",",
                    refrigerant,
                    metering.label(),
                    number(suctionPa),
                    number(suctionLineK),
                    number(liquidPa),
                    number(liquidLineK),
                    PropertyVectors.cell(wetBulbK),
                    PropertyVectors.cell(outdoorK),
                    PropertyVectors.cell(valve ? OptionalDouble.empty() : target),
                    PropertyVectors.cell(valve ? target : OptionalDouble.empty()),
                    number(pressureUncertainty()),
                    number(uncertaintyK));
        }
    }

    private VerdictVectors() {}

    private static SaturationCurve curve(String name) {
        return SaturationCurves.solving(Catalogue.standard().find(name));
    }

    static List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (String name : REFRIGERANTS) {
            for (double off : new double[] {-5, -2.5, -1, 0, 1, 2.5, 5}) {
                for (double uncertainty : new double[] {0.2, 1.0}) {
                    lines.add(line(
                            lines,
                            Readings.of(name, EXPANSION_VALVE, 6, 5.5 + off, 5.5)
                                    .uncertain(uncertainty)));
                    lines.add(line(
                            lines,
                            Readings.of(name, FIXED_ORIFICE, 8 - 2 * off, 5 + off, 8)
                                    .uncertain(uncertainty)));
                }
            }
            for (double wetBulb : new double[] {58, 63.5, 68}) {
                for (double outdoor : new double[] {75, 82, 95}) {
                    for (double superheat : new double[] {3, 8, 14}) {
                        Readings each = Readings.of(name, FIXED_ORIFICE, superheat, 5.5, 8)
                                .inAir(wetBulb, outdoor);
                        if (each.judged().evidence().deviation().isPresent()) {
                            lines.add(line(lines, each));
                        }
                    }
                }
            }
            // an evaporator that starves although the liquid line is well filled, and one that floods
            lines.add(line(lines, Readings.of(name, EXPANSION_VALVE, 18, 9.5, 5.5)));
            lines.add(line(lines, Readings.of(name, EXPANSION_VALVE, 0.5, 5.5, 5.5)));
            lines.add(line(lines, Readings.of(name, FIXED_ORIFICE, 18, 9.5, 8)));
        }
        return lines;
    }

    /** Readings that give no level, each with what stands in the way. */
    static List<String> refusals() {
        List<String> lines = new ArrayList<>();
        for (String name : REFRIGERANTS) {
            Readings sound = Readings.of(name, FIXED_ORIFICE, 8, 5.5, 8);
            double low = sound.suctionPa;
            double high = sound.liquidPa;
            for (Readings each : List.of(
                    sound.at(high, sound.suctionLineK, low, sound.liquidLineK),
                    sound.at(low, EVAPORATING_K - 12, high, sound.liquidLineK),
                    sound.at(low, sound.suctionLineK, high, CONDENSING_K + 12),
                    sound.at(low, sound.suctionLineK, high, EVAPORATING_K - 5),
                    sound.at(low, sound.suctionLineK, 50e6, sound.liquidLineK),
                    sound.inAir(85, 95),
                    sound.inAir(63, 50),
                    sound.inAir(51, 100))) {
                lines.add(String.join(",", "u" + (lines.size() + 1), each.cells(), error(each)));
            }
        }
        return lines;
    }

    private static String error(Readings readings) {
        Judgement judgement;
        try {
            judgement = readings.judged();
        } catch (ImplausibleReadingException e) {
            return "implausible-reading";
        } catch (OutOfValidityException e) {
            return "outside-range";
        }
        if (judgement.evidence().deviation().isPresent()) {
            throw new IllegalStateException(readings + " are judged: " + judgement.label());
        }
        return judgement
                .evidence()
                .findings()
                .get(0)
                .code()
                .toString()
                .toLowerCase(Locale.ROOT)
                .replace('_', '-');
    }

    private static String line(List<String> before, Readings readings) {
        Judgement judgement = readings.judged();
        Judgement.Evidence evidence = judgement.evidence();
        return String.join(
                ",",
                "v" + (before.size() + 1),
                readings.cells(),
                margin(evidence, Criterion.SUPERHEAT),
                margin(evidence, Criterion.SUBCOOLING),
                evidence.deviation()
                        .map(deviation -> fixed(deviation.target().kelvins()))
                        .orElse(""),
                probability(evidence, ChargeLevel.LOW),
                probability(evidence, ChargeLevel.ON_TARGET),
                probability(evidence, ChargeLevel.HIGH),
                judgement instanceof Judgement.OtherFault other ? other.fault().label() : "",
                judgement.label());
    }

    private static String number(double value) {
        return PropertyVectors.cell(OptionalDouble.of(value));
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

package org.satline.tables.vectors;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.satline.charge.BulkVerdicts;
import org.satline.charge.ChargeDiagnosis;
import org.satline.charge.VerdictAnswer;
import org.satline.charge.VerdictQuery;
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
        BulkVerdicts verdicts = new BulkVerdicts(VerdictVectors::curve, ChargeDiagnosis.usual());
        List<String> lines = new ArrayList<>();
        for (String name : List.of("R-22", "R-32", "R-407C", "R-410A", "R-454B")) {
            for (double off : new double[] {-5, -2.5, -1, 0, 1, 2.5, 5}) {
                for (double uncertainty : new double[] {0.2, 1.0}) {
                    lines.add(line(verdicts, lines.size() + 1, name, true, off, uncertainty));
                    lines.add(line(verdicts, lines.size() + 1, name, false, off, uncertainty));
                }
            }
        }
        return lines;
    }

    private static SaturationCurve curve(String name) {
        return SaturationCurves.solving(Catalogue.standard().find(name));
    }

    private static String line(
            BulkVerdicts verdicts, int number, String name, boolean valve, double off, double uncertainty) {
        SaturationCurve curve = curve(name);
        double suction = Math.rint(curve.dewPressurePa(EVAPORATING_K));
        double liquid = Math.rint(curve.bubblePressurePa(CONDENSING_K));
        double suctionLine = EVAPORATING_K + (valve ? 6 : 8 - 2 * off);
        double liquidLine = CONDENSING_K - (valve ? 5.5 + off : 5 + off);
        OptionalDouble none = OptionalDouble.empty();
        VerdictQuery query = new VerdictQuery(
                "v" + number,
                name,
                valve ? "expansion-valve" : "fixed-orifice",
                OptionalDouble.of(suction),
                OptionalDouble.of(suctionLine),
                OptionalDouble.of(liquid),
                OptionalDouble.of(liquidLine),
                none,
                OptionalDouble.of(OUTDOOR_K),
                valve ? none : OptionalDouble.of(8),
                valve ? OptionalDouble.of(5.5) : none,
                OptionalDouble.of(uncertainty * 10e3),
                OptionalDouble.of(uncertainty),
                none,
                none,
                none,
                none,
                Optional.empty());
        VerdictAnswer answer = verdicts.answer(query);
        return String.join(
                ",",
                query.id(),
                name,
                query.metering(),
                PropertyVectors.cell(query.suctionPressurePa()),
                PropertyVectors.cell(query.suctionLineK()),
                PropertyVectors.cell(query.liquidPressurePa()),
                PropertyVectors.cell(query.liquidLineK()),
                "",
                PropertyVectors.cell(query.condenserAirK()),
                PropertyVectors.cell(query.targetSuperheatK()),
                PropertyVectors.cell(query.targetSubcoolingK()),
                PropertyVectors.cell(query.pressureStandardUncertaintyPa()),
                PropertyVectors.cell(query.temperatureStandardUncertaintyK()),
                fixed(answer.superheatK()),
                fixed(answer.subcoolingK()),
                fixed(answer.probabilityLow()),
                fixed(answer.probabilityOnTarget()),
                fixed(answer.probabilityHigh()),
                answer.level());
    }

    private static String fixed(OptionalDouble value) {
        return value.isPresent() ? String.format(Locale.ROOT, "%.6f", value.getAsDouble()) : "";
    }
}

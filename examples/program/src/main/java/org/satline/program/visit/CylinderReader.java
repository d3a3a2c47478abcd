package org.satline.program.visit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.satline.filling.CylinderSpecification;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillQuestion;
import org.satline.filling.FillRules;
import org.satline.cylinder.Scale;
import org.satline.measurement.WeighingScale;
import org.satline.program.file.JsonFields;
import org.satline.program.file.Shown;
import org.satline.program.visit.InstrumentReader.Instruments;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Length;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurves;
import org.satline.transfer.EndFitting;
import org.satline.transfer.Holder.Provenance;
import org.satline.transfer.Hose;
import org.satline.transfer.PointKind;
import org.satline.visit.CylinderOnSite;
import org.satline.visit.HoseOnSite;

/** Reads the part {@code cylinder} of the file. */
final class CylinderReader {
    /** Names of the fields. */
    static final List<String> FIELDS = List.of(
            "name",
            "valve",
            "specification",
            "tare",
            "waterCapacity",
            "servicePressure",
            "testPressure",
            "flammableMark",
            "retestDue",
            "holding",
            "temperature",
            "pressure",
            "scaleReading",
            "grossBefore",
            "hoseContents",
            "fillRules",
            "warmest",
            "atRest",
            "owner",
            "provenance",
            "hoses");

    private static final List<String> HOSE = List.of("port", "systemEnd", "cylinderEnd", "bore", "length");

    private static final Map<String, PointKind> VALVES = Map.of(
            "recovery-vapour", PointKind.RECOVERY_CYLINDER_VAPOUR_VALVE,
            "recovery-liquid", PointKind.RECOVERY_CYLINDER_LIQUID_VALVE,
            "source-vapour", PointKind.SOURCE_CYLINDER_VAPOUR_VALVE,
            "source-liquid", PointKind.SOURCE_CYLINDER_LIQUID_VALVE);

    private static final Map<String, Provenance> PROVENANCES = Map.of(
            "new", Provenance.NEW,
            "reclaimed", Provenance.RECLAIMED,
            "recovered", Provenance.RECOVERED,
            "mixed-recovered", Provenance.MIXED_RECOVERED);

    private static final Map<String, EndFitting> FITTINGS = Map.of(
            "open-close-valve", EndFitting.OPEN_CLOSE_VALVE,
            "self-sealing", EndFitting.SELF_SEALING,
            "plain-flare", EndFitting.PLAIN_FLARE);

    /** Bore of a hose of 1/4 in; common practice, no source. */
    private static final Length USUAL_BORE = Length.ofMillimetres(4.8);

    private CylinderReader() {}

    private static List<HoseOnSite> hoses(JsonFields cylinder) {
        List<HoseOnSite> hoses = new ArrayList<>();
        for (JsonFields fields : cylinder.objects("hoses", HOSE)) {
            PointKind port = fields.choice("port", VisitReader.PORTS);
            EndFitting systemEnd = fields.choice("systemEnd", FITTINGS);
            EndFitting cylinderEnd = fields.choice("cylinderEnd", FITTINGS);
            Length bore = fields.optionalValue("bore", "4.8 mm", Length::parse).orElse(USUAL_BORE);
            hoses.add(new HoseOnSite(
                    port,
                    fields.value(
                            "length", "5 ft", text -> new Hose(systemEnd, cylinderEnd, bore, Length.parse(text)))));
        }
        return hoses;
    }

    static CylinderOnSite read(JsonFields fields, Atmosphere site, Instruments with) {
        String name = fields.value("name", "recovery cylinder no. 4", VisitReader::words);
        PointKind valve = fields.choice("valve", VALVES);
        CylinderStamps stamps = stamps(fields);
        Optional<Refrigerant> holding = fields.optionalValue("holding", "R-410A", VisitReader::refrigerant);
        Temperature temperature =
                fields.value("temperature", "84 degF", text -> onCurve(holding, Temperature.parse(text)));
        Optional<Pressure> pressure =
                fields.optionalValue("pressure", "500 micron", text -> Pressure.parse(text, site));
        try {
            return new CylinderOnSite(
                    name,
                    valve,
                    stamps,
                    holding,
                    temperature,
                    TemperatureDifference.ofKelvins(
                            2 * with.thermometer().read(temperature, "cylinder").standardUncertaintyK()),
                    pressure,
                    PressureDifference.ofPascals(pressure.map(shown -> 2
                                    * with.suctionGauge()
                                            .read(shown.gauge(site), site)
                                            .standardUncertaintyPa())
                            .orElse(0.0)),
                    scale(fields, with),
                    fields.optionalValue("hoseContents", "0.2 lb", Mass::parse).orElse(Mass.ZERO),
                    fields.optionalValue("fillRules", "us", FillRules.standard()::jurisdiction)
                            .orElseGet(FillRules.standard()::defaultJurisdiction),
                    fields.optionalValue("warmest", "130 degF", Temperature::parse)
                            .orElse(FillQuestion.USUAL_MAXIMUM),
                    fields.optionalFlag("atRest").orElse(true),
                    fields.optionalValue("owner", "the sailing club", VisitReader::words),
                    fields.optionalChoice("provenance", PROVENANCES),
                    hoses(fields));
        } catch (IllegalArgumentException e) {
            throw fields.refused(String.valueOf(e.getMessage()));
        }
    }

    private static Temperature onCurve(Optional<Refrigerant> holding, Temperature temperature) {
        holding.map(SaturationCurves::of).ifPresent(curve -> curve.bubblePressure(temperature));
        return temperature;
    }

    private static CylinderStamps stamps(JsonFields fields) {
        CylinderStamps.Builder stamps = CylinderStamps.builder()
                .tare(fields.value("tare", "27.4 lb", Mass::parse))
                .waterCapacity(fields.value("waterCapacity", "47.7 lb", Mass::parse));
        fields.optionalValue("specification", "DOT-4BW400", CylinderSpecification::parse)
                .ifPresent(stamps::specification);
        fields.optionalValue("servicePressure", "400 psig", GaugePressure::parse)
                .ifPresent(stamps::servicePressure);
        fields.optionalValue("testPressure", "42 barg", GaugePressure::parse).ifPresent(stamps::testPressure);
        fields.optionalFlag("flammableMark").ifPresent(stamps::flammableMark);
        Optional<LocalDate> retest = fields.optionalValue("retestDue", "2029-04-30", VisitReader::date);
        retest.ifPresent(stamps::retestDue);
        try {
            return stamps.build();
        } catch (IllegalArgumentException e) {
            throw fields.refused(String.valueOf(e.getMessage()));
        }
    }

    private static Optional<Scale> scale(JsonFields fields, Instruments with) {
        if (!fields.has("scaleReading")) {
            if (fields.has("grossBefore")) {
                throw fields.refused(
                        "scaleReading", "is missing; grossBefore says that the scale was zeroed after hook-up");
            }
            return Optional.empty();
        }
        WeighingScale scale = with.scale()
                .orElseThrow(() -> fields.refused("scaleReading", "stands there, but instruments.scale does not"));
        Mass reading = fields.value("scaleReading", "41.35 lb", Mass::parse);
        Optional<Mass> before = fields.optionalValue("grossBefore", "41.35 lb", Mass::parse);
        Mass largest = before.map(gross -> gross.plus(reading)).orElse(reading);
        if (!(largest.kilograms() <= 10_000)) {
            throw fields.refused("scaleReading", Shown.quoted(reading.toString()) + " is outside [0, 10000] kg");
        }
        Mass uncertainty = Mass.ofKilograms(2 * scale.standardUncertaintyOfChangeKg(Mass.ZERO, largest));
        return Optional.of(before.<Scale>map(gross -> new Scale.ZeroedAfterHookUp(gross, reading, uncertainty))
                .orElseGet(() -> new Scale.RunningGross(reading, uncertainty)));
    }
}

package org.satline.program.visit;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.charge.OperatingConditions;
import org.satline.charge.OperatingConditions.Airflow;
import org.satline.charge.OperatingConditions.Standing;
import org.satline.measurement.PressureReading;
import org.satline.measurement.SettlingTest;
import org.satline.measurement.SettlingTest.Sample;
import org.satline.program.file.JsonFields;
import org.satline.program.visit.InstrumentReader.Instruments;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.MassDifference;
import org.satline.quantity.Power;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.quantity.VolumeFlow;
import org.satline.visit.MovedSoFar;
import org.satline.visit.MovedSoFar.EarlierReading;

/** Reads the parts {@code conditions} and {@code moved} of the file: how the system ran, and what was moved before the readings. */
final class ConditionsReader {
    private static final List<String> CONDITIONS = List.of(
            "running",
            "settling",
            "outdoorMinimumMet",
            "airflow",
            "nominalCooling",
            "standingPressure",
            "standingTemperature");
    private static final List<String> SETTLING = List.of("after", "measured");
    private static final List<String> MOVED = List.of("net", "earlier");
    private static final List<String> EARLIER = List.of("net", "measured");

    private ConditionsReader() {}

    static OperatingConditions conditions(JsonFields root, Atmosphere site, Instruments with) {
        return root.optionalObject("conditions", CONDITIONS)
                .map(fields -> read(fields, site, with))
                .orElseGet(OperatingConditions::unknown);
    }

    private static OperatingConditions read(JsonFields fields, Atmosphere site, Instruments with) {
        Optional<Duration> running = fields.optionalValue("running", "20 min", DurationText::parse);
        return new OperatingConditions(
                running,
                settled(fields),
                fields.optionalFlag("outdoorMinimumMet"),
                airflow(fields),
                standing(fields, site, with));
    }

    private static Optional<SettlingTest.Outcome> settled(JsonFields fields) {
        if (!fields.has("settling")) {
            return Optional.empty();
        }
        List<Sample> series = new ArrayList<>();
        for (JsonFields each : fields.objects("settling", SETTLING)) {
            Duration after = each.value("after", "30 s", DurationText::parse);
            double kelvins = each.value("measured", "16.1 degF", TemperatureDifference::parse)
                    .kelvins();
            series.add(new Sample(after.toMillis() / 1000.0, kelvins));
        }
        try {
            return Optional.of(SettlingTest.forLineTemperatures().apply(series));
        } catch (IllegalArgumentException e) {
            throw fields.refused("settling", String.valueOf(e.getMessage()));
        }
    }

    private static Optional<Airflow> airflow(JsonFields fields) {
        if (fields.has("airflow") != fields.has("nominalCooling")) {
            throw fields.refused(
                    "airflow and nominalCooling belong together, such as \"800 cfm\" and \"24000 Btu/h\"; give both or neither");
        }
        return fields.optionalValue("airflow", "800 cfm", VolumeFlow::parse)
                .map(flow ->
                        fields.value("nominalCooling", "24000 Btu/h", text -> new Airflow(flow, Power.parse(text))));
    }

    private static Optional<Standing> standing(JsonFields fields, Atmosphere site, Instruments with) {
        if (fields.has("standingPressure") != fields.has("standingTemperature")) {
            throw fields.refused(
                    "standingPressure and standingTemperature belong together, such as \"230 psig\" and \"75 degF\"; give both or neither");
        }
        Optional<PressureReading> pressure = fields.optionalValue(
                "standingPressure",
                "230 psig",
                text -> with.liquidGauge().read(VisitReader.gaugePressure(text, site), site));
        return pressure.map(read -> new Standing(
                read,
                fields.value(
                        "standingTemperature",
                        "75 degF",
                        text -> VisitReader.probe(with.thermometer(), "system at rest")
                                .read(Temperature.parse(text), "system at rest"))));
    }

    static MovedSoFar moved(JsonFields root) {
        return root.optionalObject("moved", MOVED)
                .map(fields -> {
                    List<EarlierReading> earlier = new ArrayList<>();
                    for (JsonFields each : fields.objects("earlier", EARLIER)) {
                        MassDifference net = each.value("net", "0 lb", MassDifference::parse);
                        earlier.add(new EarlierReading(
                                net, each.value("measured", "16.1 degF", TemperatureDifference::parse)));
                    }
                    return fields.value("net", "-0.3 lb", text -> new MovedSoFar(MassDifference.parse(text), earlier));
                })
                .orElseGet(MovedSoFar::nothing);
    }
}

package org.satline.visit.file;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.charge.OperatingConditions;
import org.satline.charge.OperatingConditions.Airflow;
import org.satline.charge.OperatingConditions.Standing;
import org.satline.measurement.Reading;
import org.satline.measurement.SettlingTest;
import org.satline.measurement.SettlingTest.Sample;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.MassDifference;
import org.satline.quantity.Power;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.quantity.VolumeFlow;
import org.satline.visit.Instruments;
import org.satline.visit.MovedSoFar;
import org.satline.visit.MovedSoFar.EarlierReading;

/** Reads the parts {@code conditions} and {@code moved}: how the system ran, and what was moved before the readings. */
final class ConditionFields {
    static final List<String> CONDITIONS = List.of(
            "running",
            "settled",
            "settling",
            "outdoorMinimumMet",
            "airflow",
            "nominalCooling",
            "standingPressure",
            "standingTemperature");
    static final List<String> MOVED = List.of("net", "earlier");
    private static final List<String> SETTLING = List.of("after", "measured");
    private static final List<String> EARLIER = List.of("net", "measured");

    private ConditionFields() {}

    static OperatingConditions conditions(FieldReader fields, Atmosphere site, Instruments with) {
        return new OperatingConditions(
                fields.optional("running", "20 min", TextFields::duration),
                series(fields),
                fields.flag("settled"),
                fields.flag("outdoorMinimumMet"),
                airflow(fields),
                standing(fields, site, with));
    }

    private static Optional<SettlingTest.Outcome> series(FieldReader fields) {
        if (!fields.has("settling")) {
            return Optional.empty();
        }
        List<Sample> series = new ArrayList<>();
        for (FieldReader each : fields.objects("settling", SETTLING)) {
            Duration after = each.value("after", "30 s", TextFields::duration);
            TemperatureDifference measured = each.value("measured", "16.1 degF", TemperatureDifference::parse);
            series.add(new Sample(after.toMillis() / 1000.0, measured.kelvins()));
        }
        return Optional.of(fields.made(() -> SettlingTest.forLineTemperatures().apply(series)));
    }

    private static Optional<Airflow> airflow(FieldReader fields) {
        if (fields.has("airflow") != fields.has("nominalCooling")) {
            throw fields.refused(
                    fields.has("airflow") ? "nominalCooling" : "airflow",
                    "is missing; airflow and nominalCooling belong together, such as \"800 cfm\" and \"24000 Btu/h\"");
        }
        return fields.optional("airflow", "800 cfm", VolumeFlow::parse)
                .map(flow ->
                        fields.value("nominalCooling", "24000 Btu/h", text -> new Airflow(flow, Power.parse(text))));
    }

    private static Optional<Standing> standing(FieldReader fields, Atmosphere site, Instruments with) {
        if (fields.has("standingPressure") != fields.has("standingTemperature")) {
            throw fields.refused(
                    fields.has("standingPressure") ? "standingTemperature" : "standingPressure",
                    "is missing; standingPressure and standingTemperature belong together, such as \"230 psig\" and \"75 degF\"");
        }
        Optional<Reading<Pressure>> pressure = fields.optional(
                "standingPressure", "230 psig", text -> with.liquidGauge().read(TextFields.gauge(text, site), site));
        return pressure.map(read -> new Standing(
                read,
                fields.value(
                        "standingTemperature",
                        "75 degF",
                        text -> SystemFields.probe(with.thermometer(), "standingTemperature")
                                .read(Temperature.parse(text), "standingTemperature"))));
    }

    static MovedSoFar moved(FieldReader fields) {
        List<EarlierReading> earlier = new ArrayList<>();
        for (FieldReader each : fields.objects("earlier", EARLIER)) {
            MassDifference net = each.value("net", "0 lb", MassDifference::parse);
            earlier.add(new EarlierReading(net, each.value("measured", "16.1 degF", TemperatureDifference::parse)));
        }
        return fields.value("net", "-0.3 lb", text -> new MovedSoFar(MassDifference.parse(text), earlier));
    }
}

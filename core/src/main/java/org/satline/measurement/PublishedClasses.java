package org.satline.measurement;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.satline.quantity.PlainText;
import org.satline.resource.CsvResource;
import org.satline.resource.OnDemand;

/** The accuracy classes of the resource files, read once. */
final class PublishedClasses {
    private static final OnDemand<List<GaugeClass>> GAUGES = new OnDemand<>() {
        @Override
        protected List<GaugeClass> read() {
            return readGauges();
        }
    };
    private static final OnDemand<List<ThermometerClass>> THERMOMETERS = new OnDemand<>() {
        @Override
        protected List<ThermometerClass> read() {
            return readThermometers();
        }
    };

    private PublishedClasses() {}

    static GaugeClass gauge(String name) {
        Objects.requireNonNull(name, "name");
        return GAUGES.get().stream()
                .filter(known -> known.name().equals(name))
                .findFirst()
                .orElseThrow(
                        () -> unknown("gauge class", name, GAUGES.get().stream().map(GaugeClass::name)));
    }

    static ThermometerClass thermometer(String name) {
        Objects.requireNonNull(name, "name");
        return THERMOMETERS.get().stream()
                .filter(known -> known.name().equals(name))
                .findFirst()
                .orElseThrow(() -> unknown(
                        "thermometer class", name, THERMOMETERS.get().stream().map(ThermometerClass::name)));
    }

    private static IllegalArgumentException unknown(String what, String name, Stream<String> known) {
        return new IllegalArgumentException(
                what + " " + PlainText.quoted(name) + " is not known; use one of " + String.join(", ", known.toList()));
    }

    private static List<GaugeClass> readGauges() {
        List<GaugeClass> classes = new ArrayList<>();
        for (CsvResource.Row row : CsvResource.read(
                        PublishedClasses.class,
                        "gauge-classes.csv",
                        "name",
                        "middle_percent",
                        "outer_percent",
                        "source")
                .rows()) {
            classes.add(new GaugeClass(
                    row.text("name"), row.number("middle_percent"), row.number("outer_percent"), row.text("source")));
        }
        return List.copyOf(classes);
    }

    private static List<ThermometerClass> readThermometers() {
        List<ThermometerClass> classes = new ArrayList<>();
        for (CsvResource.Row row : CsvResource.read(
                        PublishedClasses.class,
                        "thermometer-classes.csv",
                        "name",
                        "rule",
                        "fixed_K",
                        "percent",
                        "source")
                .rows()) {
            ThermometerClass.Rule rule = switch (row.text("rule")) {
                case "greater" -> ThermometerClass.Rule.GREATER;
                case "sum" -> ThermometerClass.Rule.SUM;
                default -> throw row.fault("rule is neither greater nor sum");
            };
            classes.add(new ThermometerClass(
                    row.text("name"), rule, row.number("fixed_K"), row.number("percent"), row.text("source")));
        }
        return List.copyOf(classes);
    }
}

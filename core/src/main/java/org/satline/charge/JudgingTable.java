package org.satline.charge;

import java.util.List;
import java.util.Optional;
import org.satline.charge.margin.MeteringDevice;
import org.satline.quantity.TemperatureDifference;
import org.satline.resource.CsvResource;
import org.satline.resource.OnDemand;

/** By what the charge of each kind of system is judged, and what superheat is usual there, from their resources. */
final class JudgingTable {
    private static final String ANY = "any";
    private static final OnDemand<CsvResource> METHODS = new OnDemand<>() {
        @Override
        protected CsvResource read() {
            return CsvResource.read(
                    JudgingTable.class, "judging.csv", "feature", "metering", "method", "basis", "source");
        }
    };
    private static final OnDemand<CsvResource> TARGETS = new OnDemand<>() {
        @Override
        protected CsvResource read() {
            return CsvResource.read(
                    JudgingTable.class,
                    "application-targets.csv",
                    "feature",
                    "quantity",
                    "low_degF",
                    "high_degF",
                    "source");
        }
    };

    private JudgingTable() {}

    /** A valve that is driven meters like a valve, whatever the plate says of an orifice beside it. */
    static SystemFeature.Judged of(SystemFeature feature, MeteringDevice metering) {
        List<CsvResource.Row> rows = METHODS.get().rows().stream()
                .filter(row -> row.text("feature").equals(feature.word()))
                .toList();
        CsvResource.Row row = rows.stream()
                .filter(each -> List.of(ANY, metering.label()).contains(each.text("metering")))
                .findFirst()
                .or(() -> rows.stream().findFirst())
                .orElseThrow(() -> new IllegalStateException("judging.csv has no row \"" + feature.word() + "\""));
        return new SystemFeature.Judged(method(row.text("method")), row.text("basis"), row.text("source"));
    }

    static Optional<SystemFeature.UsualSuperheat> usualSuperheat(SystemFeature feature) {
        return TARGETS.get().rows().stream()
                .filter(row -> row.text("feature").equals(feature.word()))
                .map(row -> new SystemFeature.UsualSuperheat(
                        TemperatureDifference.ofFahrenheitDegrees(row.number("low_degF")),
                        TemperatureDifference.ofFahrenheitDegrees(row.number("high_degF")),
                        row.text("source")))
                .findFirst();
    }

    private static SystemFeature.Method method(String word) {
        for (SystemFeature.Method method : SystemFeature.Method.values()) {
            if (method.word().equals(word)) {
                return method;
            }
        }
        throw new IllegalStateException("judging.csv has an unknown method \"" + word + "\"");
    }
}

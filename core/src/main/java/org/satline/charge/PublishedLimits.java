package org.satline.charge;

import org.satline.charge.margin.Criterion;
import org.satline.quantity.TemperatureDifference;
import org.satline.resource.CsvResource;
import org.satline.resource.OnDemand;

/** Tolerances and working ranges of the published check, read from their resource. */
final class PublishedLimits {
    static final String SOURCE = "California Energy Code, Reference Appendix RA3.2 (2008), installer";

    private static final OnDemand<CsvResource> TABLE = new OnDemand<>() {
        @Override
        protected CsvResource read() {
            return CsvResource.read(PublishedLimits.class, "tolerances.csv", "item", "low", "high", "unit");
        }
    };

    private PublishedLimits() {}

    /** The symmetric tolerance of a quantity. */
    static TemperatureDifference tolerance(Criterion criterion) {
        return TemperatureDifference.ofFahrenheitDegrees(
                row(criterion.label() + " minus target").number("high"));
    }

    /** Superheat at which an expansion valve is held to control, K. */
    static double leastValveSuperheatK() {
        return kelvins(row("valve superheat").number("low"));
    }

    static double mostValveSuperheatK() {
        return kelvins(row("valve superheat").number("high"));
    }

    /** Lower limit of an item, in the unit of its row. */
    static double low(String item) {
        return row(item).number("low");
    }

    /** Upper limit of an item, in the unit of its row. */
    static double high(String item) {
        return row(item).number("high");
    }

    private static double kelvins(double fahrenheitDegrees) {
        return TemperatureDifference.ofFahrenheitDegrees(fahrenheitDegrees).kelvins();
    }

    private static CsvResource.Row row(String item) {
        for (CsvResource.Row row : TABLE.get().rows()) {
            if (row.text("item").equals(item)) {
                return row;
            }
        }
        throw new IllegalStateException("tolerances.csv has no row \"" + item + "\"");
    }
}

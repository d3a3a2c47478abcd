package org.satline.charge.margin;

import org.satline.quantity.TemperatureDifference;
import org.satline.resource.CsvResource;
import org.satline.resource.OnDemand;

/** Tolerances and working ranges of the published check, read from their resource. */
public final class PublishedLimits {
    /** The document that states them. */
    public static final String SOURCE = "California Energy Code, Reference Appendix RA3.2 (2008), installer";

    private static final OnDemand<CsvResource> TABLE = new OnDemand<>() {
        @Override
        protected CsvResource read() {
            return CsvResource.read(PublishedLimits.class, "tolerances.csv", "item", "low", "high", "unit");
        }
    };

    private PublishedLimits() {}

    /**
     * The symmetric tolerance of a quantity.
     *
     * @param criterion superheat or subcooling
     * @return above and below the target
     */
    public static TemperatureDifference tolerance(Criterion criterion) {
        return TemperatureDifference.ofFahrenheitDegrees(
                row(criterion.label() + " minus target").number("high"));
    }

    /**
     * Least superheat at which an expansion valve is held to control.
     *
     * @return K
     */
    public static double leastValveSuperheatK() {
        return kelvins(row("valve superheat").number("low"));
    }

    /**
     * Most superheat at which an expansion valve is held to control.
     *
     * @return K
     */
    public static double mostValveSuperheatK() {
        return kelvins(row("valve superheat").number("high"));
    }

    /**
     * Lower limit of an item.
     *
     * @param item as the resource names it
     * @return in the unit of its row
     */
    public static double low(String item) {
        return row(item).number("low");
    }

    /**
     * Upper limit of an item.
     *
     * @param item as the resource names it
     * @return in the unit of its row
     */
    public static double high(String item) {
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

package org.satline.saturation;

import java.math.BigDecimal;
import java.util.List;
import org.satline.quantity.Atmosphere;
import org.satline.resource.CsvResource;

/**
 * One printed cell of a published saturation table.
 *
 * @param source key of the source in published-sources.csv
 * @param refrigerant designation
 * @param given what the row is entered with, and its unit
 * @param givenValue as printed; exact
 * @param quantity what is printed, and its unit
 * @param printed the printed number with all its digits
 * @param referenceState where h and s count from; empty for other quantities
 */
record PublishedPoint(
        String source,
        String refrigerant,
        String given,
        String givenValue,
        String quantity,
        BigDecimal printed,
        String referenceState) {

    static List<PublishedPoint> all() {
        return CsvResource.read(
                        PublishedPoint.class,
                        "published-points.csv",
                        "source",
                        "refrigerant",
                        "given",
                        "given_value",
                        "quantity",
                        "printed",
                        "reference_state")
                .rows()
                .stream()
                .map(row -> new PublishedPoint(
                        row.text("source"),
                        row.text("refrigerant"),
                        row.text("given"),
                        row.text("given_value"),
                        row.text("quantity"),
                        new BigDecimal(row.text("printed")),
                        row.cell("reference_state")))
                .toList();
    }

    double givenNumber() {
        return Double.parseDouble(givenValue);
    }

    /** Half of the last printed digit; a difference of two printed numbers carries the rounding of both. */
    double rounding() {
        return printed.ulp().doubleValue() / (quantity.startsWith("vaporization") ? 1 : 2);
    }

    /** What tells this cell from all others. */
    String key() {
        return source + "|" + refrigerant + "|" + given + "|" + givenValue + "|" + quantity;
    }

    /** What an allowance can be stated for. */
    String kind() {
        if (quantity.contains("pressure") || quantity.contains("temperature") || quantity.contains("vacuum")) {
            return "pressure";
        }
        String side = quantity.startsWith("liquid") ? "liquid" : "vapour";
        return side + (quantity.endsWith("density") || quantity.endsWith("volume") ? " density" : " caloric");
    }

    /** What 100 % means for this figure, in its unit. */
    double percentBase() {
        double value = printed.doubleValue();
        if (quantity.contains("temperature")) {
            // dT/dln p is 20 K or more on every line here, so this allows no more than the pressure does
            return 20;
        }
        if (quantity.endsWith("psig")) {
            return value + Atmosphere.standard().pressure().psia();
        }
        return Math.abs(value - referenceValue());
    }

    private double referenceValue() {
        if (!referenceState.equals("IIR")) {
            return 0;
        }
        return quantity.endsWith("enthalpy") ? 200 : 1;
    }
}

package org.satline.saturation;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.satline.resource.CsvResource;

/** How far a printed figure may lie from ours beyond its rounding, with the reason; see the head of published-allowances.csv. */
record PublishedAllowance(
        String source,
        String refrigerant,
        String kind,
        OptionalDouble percent,
        OptionalDouble absolute,
        String reason) {

    static List<PublishedAllowance> all() {
        return CsvResource.read(
                        PublishedAllowance.class,
                        "published-allowances.csv",
                        "source",
                        "refrigerant",
                        "kind",
                        "percent",
                        "absolute",
                        "reason")
                .rows()
                .stream()
                .map(row -> new PublishedAllowance(
                        row.text("source"),
                        row.text("refrigerant"),
                        row.text("kind"),
                        row.optionalNumber("percent"),
                        row.optionalNumber("absolute"),
                        row.text("reason")))
                .toList();
    }

    static Optional<PublishedAllowance> find(List<PublishedAllowance> all, PublishedPoint point) {
        return all.stream().filter(a -> a.covers(point)).findFirst();
    }

    boolean covers(PublishedPoint point) {
        return source.equals(point.source())
                && (refrigerant.equals("*") || refrigerant.equals(point.refrigerant()))
                && kind.equals(point.kind());
    }

    /** In the unit of the printed figure. */
    double width(PublishedPoint point) {
        return absolute.orElse(0) + percent.orElse(0) / 100 * point.percentBase();
    }
}

package org.satline.tables;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.satline.refrigerant.Refrigerant;
import org.satline.resource.CsvResource;
import org.satline.resource.ResourceFormatException;
import org.satline.saturation.SaturationProperty;

/**
 * Certificate of a table: the largest error of every property against the equation, by region, measured at random states between the nodes.
 * Immutable.
 *
 * @param designation refrigerant
 * @param tableChecksum CRC-32C of the table that was measured, eight hexadecimal digits
 * @param entries one for each property and region that the table covers
 */
public record Certificate(String designation, String tableChecksum, List<Entry> entries) {
    static final String[] COLUMNS = {
        "designation", "table_crc32c", "property", "region", "from", "to", "states", "largest_error", "at"
    };

    /**
     * One measured error.
     *
     * @param property property
     * @param region part of the line
     * @param from where the table of this property begins, K or Pa
     * @param to where it ends, K or Pa
     * @param states number of random states
     * @param largestError largest error, relative or absolute as {@link Region#relative} says
     * @param at where it was found, K or Pa
     */
    public record Entry(
            SaturationProperty property,
            Region region,
            double from,
            double to,
            int states,
            double largestError,
            double at) {
        /**
         * Tells whether the bound of the region is kept.
         *
         * @return true if the largest error is not above the bound
         */
        public boolean keepsBound() {
            return largestError <= region.bound(property);
        }
    }

    /**
     * Copies the list.
     *
     * @param designation refrigerant
     * @param tableChecksum CRC-32C of the table that was measured, eight hexadecimal digits
     * @param entries one for each property and region that the table covers
     */
    public Certificate {
        Objects.requireNonNull(designation, "designation");
        Objects.requireNonNull(tableChecksum, "tableChecksum");
        entries = List.copyOf(entries);
    }

    /**
     * Returns the certificate stored beside the table of a refrigerant.
     *
     * @param refrigerant the refrigerant
     * @return its certificate; empty if there is no table of that name
     * @throws ResourceFormatException if it is damaged or belongs to another table
     */
    public static Optional<Certificate> of(Refrigerant refrigerant) {
        Objects.requireNonNull(refrigerant, "refrigerant");
        byte[] table = TableProvider.bytes(TableFormat.fileName(refrigerant.designation()));
        if (table == null) {
            return Optional.empty();
        }
        String name = fileName(refrigerant.designation());
        List<CsvResource.Row> rows = CsvResource.parse(
                        name, TableProvider.resources().bytes(Certificate.class, name), COLUMNS)
                .rows();
        List<Entry> entries = rows.stream().map(Certificate::entry).toList();
        String checksum = checksumText(table);
        for (CsvResource.Row row : rows) {
            if (!row.text("table_crc32c").equals(checksum)) {
                throw row.fault("belongs to another table than the one beside it; generate both anew");
            }
        }
        return Optional.of(new Certificate(refrigerant.designation(), checksum, entries));
    }

    private static Entry entry(CsvResource.Row row) {
        return new Entry(
                SaturationProperty.valueOf(row.text("property")),
                Region.valueOf(row.text("region")),
                row.number("from"),
                row.number("to"),
                (int) row.number("states"),
                row.number("largest_error"),
                row.number("at"));
    }

    static String fileName(String designation) {
        return TableFormat.fileName(designation).replace(".saturation", ".certificate.csv");
    }

    static String checksumText(byte[] table) {
        return String.format(Locale.ROOT, "%08x", TableFormat.checksum(table));
    }

    /**
     * Lays the certificate out for people.
     *
     * @return aligned text: for each property and region the largest error, the bound, and where it was found
     */
    public String toText() {
        StringBuilder text = new StringBuilder(String.format(
                Locale.ROOT,
                "%s, table %s: largest error against the equation at random states, by part of the line%n%n%-31s %-22s %8s %12s %12s  %s%n",
                designation,
                tableChecksum,
                "property",
                "temperature over end",
                "states",
                "error",
                "bound",
                "at"));
        for (Entry entry : entries) {
            double bound = entry.region().bound(entry.property());
            text.append(String.format(
                    Locale.ROOT,
                    "%-31s %-22s %8d %12.1e %12s  %.2f %s%s%n",
                    entry.property().words(),
                    entry.region().words(),
                    entry.states(),
                    entry.largestError(),
                    bound < Double.MAX_VALUE ? String.format(Locale.ROOT, "%.1e", bound) : "as measured",
                    entry.at(),
                    entry.property().askedByPressure() ? "Pa" : "K",
                    entry.keepsBound() ? "" : "  BOUND MISSED"));
        }
        return text.append(
                        "\nErrors of pressures, densities and heat capacities are relative; of temperatures in K, enthalpies J/kg, entropies J/(kg K).\n")
                .toString();
    }

    /** The file as it is stored. */
    String toCsv() {
        StringBuilder csv = new StringBuilder();
        csv.append(
                "# largest error of each property of the table against the equation; relative for pressures, densities and heat capacities\n");
        csv.append(String.join(",", COLUMNS)).append('\n');
        for (Entry entry : entries) {
            csv.append(designation).append(',').append(tableChecksum);
            csv.append(',').append(entry.property().name());
            csv.append(',').append(entry.region().name());
            csv.append(',').append(entry.from());
            csv.append(',').append(entry.to());
            csv.append(',').append(entry.states());
            csv.append(',').append(entry.largestError());
            csv.append(',').append(entry.at()).append('\n');
        }
        return csv.toString();
    }
}

package org.satline.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.satline.explanation.Finding;
import org.satline.quantity.Temperature;
import org.satline.quantity.UnitSystem;
import org.satline.saturation.SaturationCurve;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/**
 * A saturation table for people: rows at even steps of temperature, as CSV or as aligned text, with source, reference state and certificate
 * in the head. Immutable and thread-safe.
 */
public final class TablePage {
    private static final int MOST_ROWS = 100_000;
    private static final int GAP = 2;

    private final SaturationCurve curve;
    private final PageUnits units;
    private final List<String> names;
    private final List<List<String>> rows;

    private TablePage(SaturationCurve curve, PageUnits units, List<List<String>> rows) {
        this.curve = curve;
        this.units = units;
        this.names = names(units);
        this.rows = List.copyOf(rows);
    }

    /**
     * Computes the rows of a page.
     *
     * @param curve where the numbers come from, either engine
     * @param units units of the page
     * @param from first temperature, degC or degF
     * @param to last temperature, degC or degF; not below {@code from}
     * @param step spacing, above 0, degC or degF
     * @return the page
     * @throws IllegalArgumentException if the limits or the step make no table of at most 100000 rows
     * @throws org.satline.quantity.OutOfValidityException if a temperature lies outside the lines
     */
    public static TablePage of(SaturationCurve curve, PageUnits units, double from, double to, double step) {
        Objects.requireNonNull(curve, "curve");
        Objects.requireNonNull(units, "units");
        if (!(step > 0 && from <= to && (to - from) / step < MOST_ROWS)) {
            throw new IllegalArgumentException("from " + from + " to " + to + " in steps of " + step + " "
                    + units.temperatureUnit() + " is no table of 1 to " + MOST_ROWS
                    + " rows; give a first temperature not above the last, and a step above 0");
        }
        List<List<String>> rows = new ArrayList<>();
        int count = (int) Math.floor((to - from) / step + 1e-9);
        for (int i = 0; i <= count; i++) {
            rows.add(row(curve, units, units.temperature(from + i * step)));
        }
        return new TablePage(curve, units, rows);
    }

    private static List<String> names(PageUnits u) {
        return List.of(
                "temperature " + u.temperatureUnit(),
                "bubble pressure " + u.pressureUnit(),
                "dew pressure " + u.pressureUnit(),
                "liquid density " + u.densityUnit(),
                "vapour density " + u.densityUnit(),
                "liquid enthalpy " + u.enthalpyUnit(),
                "vapour enthalpy " + u.enthalpyUnit(),
                "liquid entropy " + u.entropyUnit(),
                "vapour entropy " + u.entropyUnit());
    }

    private static List<String> row(SaturationCurve curve, PageUnits u, Temperature t) {
        return List.of(
                number("%.2f", u.of(t)),
                significant(u.of(curve.bubblePressure(t))),
                significant(u.of(curve.dewPressure(t))),
                significant(u.of(curve.bubbleLiquidDensity(t))),
                significant(u.of(curve.dewVapourDensity(t))),
                number("%.2f", u.of(curve.bubbleLiquidEnthalpy(t))),
                number("%.2f", u.of(curve.dewVapourEnthalpy(t))),
                number("%.4f", u.of(curve.bubbleLiquidEntropy(t))),
                number("%.4f", u.of(curve.dewVapourEntropy(t))));
    }

    private static String number(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }

    /** Five significant digits, without an exponent where that stays short. */
    private static String significant(double value) {
        int digits = 4 - (int) Math.floor(Math.log10(value));
        return digits > 9 ? number("%.4e", value) : number("%." + Math.max(0, digits) + "f", value);
    }

    private List<String> head() {
        List<String> head = new ArrayList<>();
        head.add(curve.refrigerant().designation() + ", saturation, "
                + curve.engine().words() + ", data " + curve.refrigerant().dataVersion());
        head.add("source: " + curve.source());
        List<Finding> warnings = curve.warnings();
        if (!warnings.isEmpty()) {
            Wording words = Wording.of(Language.ENGLISH, units == PageUnits.SI ? UnitSystem.SI : UnitSystem.US);
            warnings.forEach(warning -> head.add("warning: " + words.of(warning)));
        }
        head.add("reference: " + curve.referenceState().description());
        head.add("pressures are absolute; liquid at the bubble line, vapour at the dew line");
        return head;
    }

    private List<String> certificate() {
        List<String> lines = new ArrayList<>();
        if (curve instanceof TableCurve) {
            Certificate.of(curve.refrigerant()).ifPresent(certificate -> certify(certificate, lines));
        }
        return lines;
    }

    private static void certify(Certificate certificate, List<String> lines) {
        lines.add("certificate of table " + certificate.tableChecksum()
                + ": largest error against the equation, SI units (pressures, densities, heat capacities relative)");
        for (Certificate.Entry entry : certificate.entries()) {
            if (entry.region() != Region.ABOVE_0_99) {
                lines.add(String.format(
                        Locale.ROOT,
                        "  %s, %s of the end: %.1e",
                        entry.property().words(),
                        entry.region().words(),
                        entry.largestError()));
            }
        }
    }

    /**
     * Prints the page as CSV: head lines behind {@code #}, then names with units, then rows.
     *
     * @return the text, each line ended by a line feed
     */
    public String toCsv() {
        StringBuilder csv = new StringBuilder();
        List<String> comments = head();
        comments.addAll(certificate());
        for (String line : comments) {
            csv.append("# ").append(line).append('\n');
        }
        csv.append(String.join(",", names)).append('\n');
        for (List<String> row : rows) {
            csv.append(String.join(",", row)).append('\n');
        }
        return csv.toString();
    }

    /**
     * Prints the page as aligned text, for the wall: the rows first, the certificate of the table below them.
     *
     * @return the text, each line ended by a line feed
     */
    public String toText() {
        StringBuilder text = new StringBuilder();
        for (String line : head()) {
            text.append(line).append('\n');
        }
        text.append('\n');
        List<String> quantities = names.stream()
                .map(n -> n.substring(0, n.indexOf(' ', n.startsWith("temp") ? 0 : n.indexOf(' ') + 1)))
                .toList();
        List<String> unitNames = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            unitNames.add(names.get(i).substring(quantities.get(i).length() + 1));
        }
        int[] widths = new int[names.size()];
        List<List<String>> lines = new ArrayList<>(List.of(quantities, unitNames));
        lines.addAll(rows);
        for (List<String> line : lines) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], line.get(i).length() + GAP);
            }
        }
        for (List<String> line : lines) {
            for (int i = 0; i < widths.length; i++) {
                text.append(" ".repeat(widths[i] - line.get(i).length())).append(line.get(i));
            }
            text.append('\n');
        }
        List<String> below = certificate();
        if (!below.isEmpty()) {
            text.append('\n').append(String.join("\n", below)).append('\n');
        }
        return text.toString();
    }

    @Override
    public String toString() {
        return curve.refrigerant().designation() + " in " + units + ", " + rows.size() + " rows";
    }
}

package org.satline.equation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.satline.resource.CsvResource.Row;

/**
 * Makes residual terms from printed rows. Rows of one form that follow each other are one group; each group is summed in the order of its
 * rows.
 */
final class TermRows {
    /** Columns of which a file of terms may have those that its forms use. */
    static final String[] COLUMNS = {"d", "t", "l", "g", "m", "eta", "eps", "beta", "gam", "a", "b", "A", "B", "C", "D"
    };

    /** Above every exponent of delta inside an exponential that was ever printed; each costs a multiplication. */
    private static final int LARGEST_EXPONENT = 100;

    /** The forms of terms, each with its columns beside {@code n}, between blanks. */
    private enum Form {
        POWER("power", " d t "),
        EXPONENTIAL("exponential", " d t l g "),
        GAUSSIAN("gaussian", " d t eta eps beta gam "),
        GAUSSIAN_DENSITY("gaussian-density", " d t eta eps beta gam "),
        DOUBLE_EXPONENTIAL("double-exponential", " d t l m "),
        ASSOCIATION("association", " d t eta eps beta gam b "),
        CRITICAL_REGION("critical-region", " a b beta A B C D ");

        private final String word;
        private final String columns;

        Form(String word, String columns) {
            this.word = word;
            this.columns = columns;
        }

        static Form of(Row row) {
            for (Form form : values()) {
                if (form.word.equals(row.text("form"))) {
                    return form;
                }
            }
            throw row.fault("form \"" + row.cell("form") + "\" is not known; the forms are "
                    + Arrays.stream(values()).map(form -> form.word).toList());
        }
    }

    private final List<Row> rows;

    private TermRows(List<Row> rows) {
        this.rows = rows;
    }

    /** The groups, in the order of the rows. */
    static ResidualTerms[] read(List<Row> rows) {
        List<ResidualTerms> groups = new ArrayList<>();
        for (int start = 0; start < rows.size(); ) {
            Form form = Form.of(rows.get(start));
            int end = start + 1;
            while (end < rows.size() && rows.get(end).text("form").equals(form.word)) {
                end++;
            }
            groups.add(new TermRows(rows.subList(start, end)).group(form));
            start = end;
        }
        return groups.toArray(new ResidualTerms[0]);
    }

    private ResidualTerms group(Form form) {
        for (Row row : rows) {
            refuseForeignColumns(form, row);
        }
        double[] n = column("n");
        return switch (form) {
            case POWER -> new PolynomialTerms(n, column("d"), column("t"), new int[n.length], new double[n.length]);
            case EXPONENTIAL -> new PolynomialTerms(n, column("d"), column("t"), wholeNumbers("l"), columnOrOnes("g"));
            case GAUSSIAN ->
                new GaussianTerms(
                        n, column("d"), column("t"), column("eta"), column("eps"), column("beta"), column("gam"));
            case GAUSSIAN_DENSITY ->
                new DensityGaussianTerms(
                        n, column("d"), column("t"), column("eta"), column("eps"), column("beta"), column("gam"));
            case DOUBLE_EXPONENTIAL ->
                new DoubleExponentialTerms(n, column("d"), column("t"), column("l"), column("m"));
            case ASSOCIATION ->
                new AssociationTerms(
                        n,
                        column("d"),
                        column("t"),
                        column("eta"),
                        column("eps"),
                        column("beta"),
                        column("gam"),
                        column("b"));
            case CRITICAL_REGION ->
                new CriticalRegionTerms(
                        n,
                        column("a"),
                        column("b"),
                        column("beta"),
                        column("A"),
                        column("B"),
                        column("C"),
                        column("D"));
        };
    }

    private static void refuseForeignColumns(Form form, Row row) {
        for (String name : COLUMNS) {
            if (!row.isEmpty(name) && !form.columns.contains(" " + name + " ")) {
                throw row.fault(
                        name + " stands in a row of the form " + form.word + ", which has none; empty the cell");
            }
        }
    }

    private double[] column(String name) {
        double[] values = new double[rows.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = rows.get(i).number(name);
        }
        return values;
    }

    /** The decay factor, 1 in most papers, which then print none. */
    private double[] columnOrOnes(String name) {
        if (!rows.get(0).isEmpty(name)) {
            return column(name);
        }
        for (Row row : rows) {
            if (!row.isEmpty(name)) {
                throw row.fault(
                        name + " stands here but not in the first row of its group; give it in each row or in none");
            }
        }
        double[] ones = new double[rows.size()];
        Arrays.fill(ones, 1);
        return ones;
    }

    private int[] wholeNumbers(String name) {
        int[] values = new int[rows.size()];
        for (int i = 0; i < values.length; i++) {
            double value = rows.get(i).number(name);
            values[i] = (int) value;
            if (values[i] != value || !(value >= 1 && value <= LARGEST_EXPONENT)) {
                throw rows.get(i)
                        .fault(name + " is " + rows.get(i).cell(name) + ", expected a whole number from 1 to "
                                + LARGEST_EXPONENT);
            }
        }
        return values;
    }
}

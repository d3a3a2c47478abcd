package org.satline.tables;

import java.util.List;
import java.util.Objects;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.Range;
import org.satline.refrigerant.Refrigerant;
import org.satline.resource.ResourceFormatException;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.saturation.SaturationProperty;

/**
 * A saturation table made from an equation at hand, such as one of the caller's own: made once, kept as a file, and read again at each
 * start. Immutable, thread-safe.
 *
 * <pre>{@code
 * FluidModel model = FluidModel.of(refrigerant, EquationLibrary.standard().with(files));
 * GeneratedTable made = GeneratedTable.of(model); // takes seconds
 * byte[] kept = made.toBytes();
 * Certificate certificate = made.certificate(); // what its largest errors are
 *
 * SaturationCurve curve = GeneratedTable.read(model, "own.saturation", kept).curve();
 * }</pre>
 *
 * <p>A {@link org.satline.saturation.SaturationCurveProvider} of the program may offer the curve, so that
 * {@link SaturationCurves#of} finds it. The format of the file may change in any release: keep the equation, make the table anew.
 */
public final class GeneratedTable {
    /** Random states of each line in each region. */
    static final int CERTIFIED_STATES = 200;
    /** Where a table that is read is held against the equation, as a share of its range. */
    private static final double[] HELD_AGAINST = {0.1, 0.5, 0.8};
    /** Relative; a hundred times the bound of a pressure, and far below what a changed digit of an equation makes. */
    private static final double SAME_EQUATION = 1e-6;

    private final FluidModel model;
    private final TableData data;
    private final byte[] bytes;
    private final List<SaturationProperty> shortOfBound;

    private GeneratedTable(FluidModel model, TableData data, byte[] bytes, List<SaturationProperty> shortOfBound) {
        this.model = model;
        this.data = data;
        this.bytes = bytes;
        this.shortOfBound = List.copyOf(shortOfBound);
    }

    /**
     * Makes a table.
     *
     * @param model of the refrigerant, with its equations, pairs and reference state
     * @return its table
     * @throws IllegalArgumentException if the model counts from a reference state that is not the usual one of that refrigerant
     * @throws org.satline.equilibrium.ConvergenceException if a point of its lines cannot be found
     */
    public static GeneratedTable of(FluidModel model) {
        TableBuilder builder = new TableBuilder(Objects.requireNonNull(model, "model"));
        byte[] bytes = TableWriter.write(builder.build());
        // what is written is rounded: answers come from that
        String name = TableFormat.fileName(model.refrigerant().designation());
        TableData data = TableReader.read(name, bytes);
        if (!countsFrom(model, data)) {
            throw new IllegalArgumentException(
                    "a table counts enthalpy and entropy from the usual reference state, not from "
                            + model.referenceState() + "; give the model as it was made");
        }
        return new GeneratedTable(model, data, bytes, builder.shortOfBound());
    }

    /**
     * Reads a table that was made before.
     *
     * @param model the model that it was made from; near the end of a line it answers
     * @param name of the file, for messages
     * @param bytes as {@link #toBytes} gave them
     * @return the table
     * @throws ResourceFormatException if the file is damaged, of another version of the format, or was made from another refrigerant, other
     *     data of the library or another equation
     */
    public static GeneratedTable read(FluidModel model, String name, byte[] bytes) {
        Objects.requireNonNull(model, "model");
        Objects.requireNonNull(name, "name");
        byte[] own = bytes.clone();
        TableData data = TableReader.read(name, own);
        Refrigerant refrigerant = model.refrigerant();
        if (!data.isOf(refrigerant)) {
            throw other(name, data.designation() + ", not from " + refrigerant.designation());
        }
        if (!data.dataVersion().equals(refrigerant.dataVersion())) {
            throw other(name, "data " + data.dataVersion() + ", not from " + refrigerant.dataVersion());
        }
        SaturationCurve solving = SaturationCurves.solving(model);
        TableCurve curve = new TableCurve(refrigerant, data, solving);
        if (!data.source().equals(solving.source()) || !countsFrom(model, data)) {
            throw other(name, "another equation or another reference state");
        }
        Range range = solving.bubbleTemperatureRange();
        for (double share : HELD_AGAINST) {
            double temperatureK = range.low() + share * (range.high() - range.low());
            Range held = data.bubble().temperatures();
            if (!(temperatureK >= held.low() && temperatureK <= held.high())
                    || !close(curve.bubblePressurePa(temperatureK), solving.bubblePressurePa(temperatureK))
                    || !close(curve.dewVapourDensity(temperatureK), solving.dewVapourDensity(temperatureK))) {
                throw other(name, "an equation with other coefficients");
            }
        }
        return new GeneratedTable(model, data, own, List.of());
    }

    private static boolean countsFrom(FluidModel model, TableData data) {
        return new TableCurve(model.refrigerant(), data)
                .referenceState()
                .description()
                .equals(model.referenceState().description());
    }

    private static boolean close(double table, double solved) {
        return Math.abs(table / solved - 1) <= SAME_EQUATION;
    }

    private static ResourceFormatException other(String name, String from) {
        return new ResourceFormatException(name, 0, "was made from " + from + "; make the table anew");
    }

    /**
     * The table as a file.
     *
     * @return its bytes, a new array
     */
    public byte[] toBytes() {
        return bytes.clone();
    }

    /**
     * Measures the table against the equation, at the same random states each time; takes seconds.
     *
     * @return the largest error of every property by region; {@link Certificate.Entry#keepsBound} tells where an aim is missed
     */
    public Certificate certificate() {
        return new Certificate(
                data.designation(),
                Certificate.checksumText(bytes),
                new Certifier(model, data, CERTIFIED_STATES).measure());
    }

    /**
     * Answers from the table.
     *
     * @return a curve; where a column stops short of the line it solves the equation of the model
     */
    public SaturationCurve curve() {
        return new TableCurve(model.refrigerant(), data, SaturationCurves.solving(model));
    }

    TableData data() {
        return data;
    }

    /** Properties that miss a bound at one of the points tried when it was made. */
    List<SaturationProperty> shortOfBound() {
        return shortOfBound;
    }
}

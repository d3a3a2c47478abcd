package org.satline.fleet;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * How a model answers in the steady state to charge, outdoor air and wet bulb, from the simulated systems of the
 * library at the points of a grid, linear between them; beyond the grid its edge answers. What a fault adds is taken at
 * the rated charge and grows linearly with severity. The grid is in responses.csv, which {@link ResponseMaker} makes.
 * Immutable, thread-safe.
 */
public final class ResponseTable {
    /** Charge as a share of the rated one. */
    static final List<Double> CHARGES = List.of(0.5, 0.6, 0.7, 0.75, 0.8, 0.85, 0.9, 0.95, 1.0, 1.05, 1.1);
    /** Outdoor air, degC. */
    static final List<Double> OUTDOOR = List.of(18.0, 24.0, 30.0, 36.0, 42.0);
    /** Wet bulb of the return air, degC. */
    static final List<Double> WET_BULBS = List.of(15.0, 16.75, 18.5, 20.25, 22.0);
    /** Dry bulb of the return air, degC: a thermostat holds it. */
    static final double RETURN_C = 25.5;
    /** Suction pressure, liquid pressure, suction line, liquid line, discharge line, supply air. */
    static final int ANSWERS = 6;

    /** By charge, outdoor air, wet bulb. */
    private final double[][][][] sound = new double[CHARGES.size()][OUTDOOR.size()][WET_BULBS.size()][ANSWERS];
    /** What a fault of severity 1 adds, by fault and outdoor air. */
    private final double[][][] added = new double[UnitFault.values().length][OUTDOOR.size()][ANSWERS];

    private ResponseTable() {}

    /** Read when first asked for: {@link ResponseMaker} needs the axes where there is no file yet. */
    private static final class Holder {
        static final Map<UnitModel, ResponseTable> ALL = read();
    }

    /**
     * Returns the table of a model.
     *
     * @param model the model
     * @return its table
     */
    public static ResponseTable of(UnitModel model) {
        return Objects.requireNonNull(Holder.ALL.get(model));
    }

    /**
     * Answers without a fault.
     *
     * @param charge share of the rated charge
     * @param outdoorC outdoor air, degC
     * @param wetBulbC wet bulb of the return air, degC
     * @param out receives suction kPa, liquid kPa, then suction line, liquid line, discharge line and supply air, degC
     */
    public void sound(double charge, double outdoorC, double wetBulbC, double[] out) {
        double c = place(CHARGES, charge);
        double o = place(OUTDOOR, outdoorC);
        double w = place(WET_BULBS, wetBulbC);
        Arrays.fill(out, 0, ANSWERS, 0);
        for (int corner = 0; corner < 8; corner++) {
            int i = (int) c + (corner & 1);
            int j = (int) o + (corner >> 1 & 1);
            int k = (int) w + (corner >> 2);
            double weight = weight(c, i) * weight(o, j) * weight(w, k);
            if (weight > 0) {
                double[] node = sound[i][j][k];
                for (int a = 0; a < ANSWERS; a++) {
                    out[a] += weight * node[a];
                }
            }
        }
    }

    /**
     * Adds what a fault does.
     *
     * @param fault which
     * @param severity 0 for none, 1 for that of the table
     * @param outdoorC outdoor air, degC
     * @param out answers without it, changed here
     */
    public void add(UnitFault fault, double severity, double outdoorC, double[] out) {
        double o = place(OUTDOOR, outdoorC);
        for (int j = (int) o; j <= (int) o + 1; j++) {
            double weight = weight(o, j) * severity;
            if (weight > 0) {
                for (int a = 0; a < ANSWERS; a++) {
                    out[a] += weight * added[fault.index()][j][a];
                }
            }
        }
    }

    private static double weight(double place, int node) {
        return Math.max(0, 1 - Math.abs(place - node));
    }

    /** Fractional index on an axis, inside it. */
    private static double place(List<Double> axis, double value) {
        int last = axis.size() - 1;
        if (!(value > axis.get(0))) {
            return 0;
        }
        for (int i = 0; i < last; i++) {
            if (value < axis.get(i + 1)) {
                return i + (value - axis.get(i)) / (axis.get(i + 1) - axis.get(i));
            }
        }
        return last;
    }

    private static Map<UnitModel, ResponseTable> read() {
        Map<UnitModel, ResponseTable> tables = new EnumMap<>(UnitModel.class);
        for (UnitModel model : UnitModel.values()) {
            tables.put(model, new ResponseTable());
        }
        try (InputStream stream = Objects.requireNonNull(ResponseTable.class.getResourceAsStream("responses.csv"));
                BufferedReader lines = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            lines.lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("model,"))
                    .forEach(line -> put(tables, line.split(",", -1)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        for (ResponseTable table : tables.values()) {
            table.subtract();
        }
        return tables;
    }

    private static void put(Map<UnitModel, ResponseTable> tables, String[] fields) {
        ResponseTable table = Objects.requireNonNull(tables.get(UnitModel.valueOf(fields[0])));
        double[] answers = new double[ANSWERS];
        for (int a = 0; a < ANSWERS; a++) {
            answers[a] = Double.parseDouble(fields[5 + a]);
        }
        int j = OUTDOOR.indexOf(Double.valueOf(fields[3]));
        UnitFault fault = UnitFault.valueOf(fields[1]);
        if (fault == UnitFault.NONE) {
            int i = CHARGES.indexOf(Double.valueOf(fields[2]));
            table.sound[i][j][WET_BULBS.indexOf(Double.valueOf(fields[4]))] = answers;
        } else {
            table.added[fault.index()][j] = answers;
        }
    }

    private void subtract() {
        int rated = CHARGES.indexOf(1.0);
        int middle = WET_BULBS.size() / 2;
        for (UnitFault fault : UnitFault.values()) {
            for (int j = 0; j < OUTDOOR.size() && fault != UnitFault.NONE; j++) {
                for (int a = 0; a < ANSWERS; a++) {
                    added[fault.index()][j][a] -= sound[rated][j][middle][a];
                }
            }
        }
    }
}

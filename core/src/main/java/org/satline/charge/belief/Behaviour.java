package org.satline.charge.belief;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.satline.charge.margin.MeteringDevice;
import org.satline.resource.CsvResource;
import org.satline.resource.OnDemand;

/**
 * How many simulated systems answer to an error of the charge together with at most one other fault: mean of each
 * clue, how it goes with target and weather, and how
 * the systems scatter about it. Read from {@code behaviour.csv}, whose head says how it was made; to the scatter of
 * the simulation {@code spread.csv} adds what
 * measured machines show beyond it.
 */
final class Behaviour {
    static final int CLUES = Symptom.values().length;
    static final int AROUND = Around.values().length;
    private static final String SOUND = "none";
    private static final OnDemand<Map<MeteringDevice, Behaviour>> TABLE = new OnDemand<>() {
        @Override
        protected Map<MeteringDevice, Behaviour> read() {
            return parsed();
        }
    };

    private final List<Cell> cells;
    private final Cell sound;

    private Behaviour(List<Cell> cells) {
        this.cells = List.copyOf(cells);
        this.sound = cells.stream()
                .filter(cell -> cell.fault().isEmpty() && Math.abs(cell.chargeError()) < 1e-9)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("behaviour.csv has no sound system"));
    }

    /** One hypothesis. Arrays are shared with nobody outside of this room and never written to. */
    static final class Cell {
        private final Optional<Fault> fault;
        private final double chargeError;
        private final double[] mean;
        private final double[] slopes;
        private final double[] scatter;
        private final double logPrior;

        /**
         * A hypothesis.
         *
         * @param fault the fault beside the charge; empty for none
         * @param chargeError charge less the right charge, over the right charge
         * @param share of the hypotheses of the same fault and charge error that this one stands for
         * @param mean of each clue at the usual surroundings
         * @param slopes of each clue with each surrounding, row by row
         * @param scatter covariance of the clues over systems, lower triangle row by row, widening included
         */
        Cell(
                Optional<Fault> fault,
                double chargeError,
                double share,
                double[] mean,
                double[] slopes,
                double[] scatter) {
            this.fault = fault;
            this.chargeError = chargeError;
            this.mean = mean;
            this.slopes = slopes;
            this.scatter = scatter;
            this.logPrior = Math.log(Priors.of(fault, chargeError) * share);
        }

        Optional<Fault> fault() {
            return fault;
        }

        double chargeError() {
            return chargeError;
        }

        double mean(int clue) {
            return mean[clue];
        }

        double scatter(int one, int other) {
            return scatter[at(one, other)];
        }

        /** Logarithm of its weight beforehand. */
        double logPrior() {
            return logPrior;
        }

        boolean ofAirflow() {
            return fault.filter(found -> found == Fault.LOW_EVAPORATOR_AIRFLOW).isPresent();
        }

        double slope(int clue, int around) {
            return slopes[clue * AROUND + around];
        }
    }

    static Behaviour of(MeteringDevice metering) {
        Behaviour found = TABLE.get().get(metering);
        if (found == null) {
            throw new IllegalStateException("behaviour.csv has no rows for " + metering.label());
        }
        return found;
    }

    List<Cell> cells() {
        return cells;
    }

    /** The system with nothing wrong. */
    Cell sound() {
        return sound;
    }

    /** Place of an entry in a lower triangle. */
    static int at(int row, int column) {
        return row >= column ? row * (row + 1) / 2 + column : at(column, row);
    }

    private static Map<MeteringDevice, Behaviour> parsed() {
        double[] widening = widening();
        Map<MeteringDevice, List<Cell>> found = new EnumMap<>(MeteringDevice.class);
        CsvResource table = CsvResource.read(
                Behaviour.class,
                "behaviour.csv",
                "metering",
                "fault",
                "charge_error",
                "share",
                "mean",
                "slopes",
                "scatter");
        for (CsvResource.Row row : table.rows()) {
            double[] scatter = numbers(row.text("scatter"), CLUES * (CLUES + 1) / 2);
            for (int i = 0; i < CLUES; i++) {
                scatter[at(i, i)] += widening[i] * widening[i];
            }
            found.computeIfAbsent(MeteringDevice.ofLabel(row.text("metering")), device -> new ArrayList<>())
                    .add(new Cell(
                            fault(row.text("fault")),
                            row.number("charge_error"),
                            row.number("share"),
                            numbers(row.text("mean"), CLUES),
                            numbers(row.text("slopes"), CLUES * AROUND),
                            scatter));
        }
        Map<MeteringDevice, Behaviour> all = new EnumMap<>(MeteringDevice.class);
        found.forEach((device, cells) -> all.put(device, new Behaviour(cells)));
        return all;
    }

    private static Optional<Fault> fault(String label) {
        return label.equals(SOUND) ? Optional.empty() : Optional.of(Fault.ofLabel(label));
    }

    private static double[] widening() {
        double[] widening = new double[CLUES];
        for (CsvResource.Row row : CsvResource.read(
                        Behaviour.class, "spread.csv", "clue", "standard_deviation_K", "basis", "source")
                .rows()) {
            widening[Symptom.valueOf(row.text("clue")).column()] = row.number("standard_deviation_K");
        }
        return widening;
    }

    private static double[] numbers(String cell, int count) {
        String[] parts = cell.split(" ", -1);
        if (parts.length != count) {
            throw new IllegalStateException("behaviour.csv has " + parts.length + " numbers instead of " + count);
        }
        double[] numbers = new double[count];
        for (int i = 0; i < count; i++) {
            numbers[i] = Double.parseDouble(parts[i]);
        }
        return numbers;
    }
}

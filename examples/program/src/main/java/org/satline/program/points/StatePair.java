package org.satline.program.points;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.PhaseSplit;
import org.satline.equilibrium.StateFinder;
import org.satline.program.file.CsvRow;
import org.satline.program.file.Shown;

/** The two cells of a row that name a state, and the phase where one is named. */
final class StatePair {
    /** Columns that a file may leave out. */
    static final List<String> OPTIONAL = List.of(
            "density_kg_m3",
            "specific_volume_m3_kg",
            "enthalpy_J_kg",
            "entropy_J_kg_K",
            "internal_energy_J_kg",
            "quality",
            "phase",
            "component");

    private static final String PAIRS =
            "temperature_K and pressure_Pa; pressure_Pa with enthalpy_J_kg, entropy_J_kg_K, density_kg_m3 or quality;"
                    + " temperature_K with the same; enthalpy_J_kg and entropy_J_kg_K; internal_energy_J_kg and"
                    + " specific_volume_m3_kg (or density_kg_m3 in its place)";

    private enum Cell {
        TEMPERATURE("temperature_K"),
        PRESSURE("pressure_Pa"),
        DENSITY("density_kg_m3"),
        ENTHALPY("enthalpy_J_kg"),
        ENTROPY("entropy_J_kg_K"),
        ENERGY("internal_energy_J_kg"),
        QUALITY("quality");

        private final String column;

        Cell(String column) {
            this.column = column;
        }
    }

    private final Map<Cell, Double> given = new EnumMap<>(Cell.class);
    private final Optional<PhaseSplit.Phases> phase;

    private StatePair(CsvRow row) {
        for (Cell cell : Cell.values()) {
            row.number(cell.column).ifPresent(value -> given.put(cell, value));
        }
        row.number("specific_volume_m3_kg").ifPresent(this::volume);
        phase = row.text("phase").map(StatePair::phaseOf);
    }

    static StatePair of(CsvRow row) {
        return new StatePair(row);
    }

    /** True where a column is filled in that names no saturation state. */
    static boolean hasMoreThanTemperatureAndPressure(CsvRow row) {
        return OPTIONAL.stream().anyMatch(column -> row.text(column).isPresent());
    }

    private void volume(double volume) {
        if (given.containsKey(Cell.DENSITY)) {
            throw new IllegalArgumentException("density_kg_m3 and specific_volume_m3_kg say the same; leave one empty");
        }
        if (!(volume > 0)) {
            throw new IllegalArgumentException(
                    "specific_volume_m3_kg " + volume + " is not above 0; give a volume in m3/kg");
        }
        given.put(Cell.DENSITY, 1 / volume);
    }

    private static PhaseSplit.Phases phaseOf(String word) {
        return Arrays.stream(PhaseSplit.Phases.values())
                .filter(p -> label(p).equals(word))
                .findFirst()
                .orElseThrow(
                        () -> new IllegalArgumentException("phase " + Shown.quoted(word) + " is not known; allowed: "
                                + Arrays.stream(PhaseSplit.Phases.values())
                                        .map(StatePair::label)
                                        .collect(Collectors.joining(", "))));
    }

    /** The word of the column phase. */
    static String label(PhaseSplit.Phases phases) {
        return phases.name().toLowerCase(Locale.ROOT);
    }

    /** Whether the pair depends on the zero that was chosen for enthalpy and entropy. */
    boolean needsReference() {
        return given.containsKey(Cell.ENTHALPY) || given.containsKey(Cell.ENTROPY) || given.containsKey(Cell.ENERGY);
    }

    /** The state of the pair, the one of the named phase where several share it. */
    PhaseSplit solve(FluidModel model, PointQuantity quantity) {
        if (given.size() != 2) {
            throw new IllegalArgumentException(quantity.label() + " of a state is found from two quantities, "
                    + given.size() + " given; fill in both of one pair: " + PAIRS);
        }
        List<PhaseSplit> all = all(model.states());
        List<PhaseSplit> fitting = all.stream()
                .filter(s -> phase.isEmpty() || s.phases() == phase.get())
                .toList();
        if (fitting.size() == 1) {
            return fitting.get(0);
        }
        if (all.isEmpty()) {
            throw new IllegalArgumentException(
                    "no state of " + model.refrigerant().designation() + " has this pair; check the reference state");
        }
        throw new IllegalArgumentException((fitting.isEmpty()
                        ? "no state of that phase has this pair; found: "
                        : "several states share this pair: ")
                + (fitting.isEmpty() ? all : fitting)
                        .stream()
                                .map(s -> String.format(
                                        Locale.ROOT,
                                        "%s at %.8g K and %.8g Pa",
                                        label(s.phases()),
                                        s.temperatureK(),
                                        s.pressurePa()))
                                .collect(Collectors.joining(", "))
                + "; name one in the column phase, or give temperature_K and pressure_Pa");
    }

    private List<PhaseSplit> all(StateFinder states) {
        if (has(Cell.TEMPERATURE, Cell.PRESSURE)) {
            return List.of(states.atTemperatureAndPressure(value(Cell.TEMPERATURE), value(Cell.PRESSURE)));
        }
        if (has(Cell.ENTHALPY, Cell.ENTROPY)) {
            return List.of(states.atEnthalpyAndEntropy(value(Cell.ENTHALPY), value(Cell.ENTROPY)));
        }
        if (has(Cell.ENERGY, Cell.DENSITY)) {
            return List.of(states.atEnergyAndVolume(value(Cell.ENERGY), 1 / value(Cell.DENSITY)));
        }
        Cell other = given.keySet().stream()
                .filter(c -> c != Cell.TEMPERATURE && c != Cell.PRESSURE)
                .findFirst()
                .orElseThrow();
        if (given.containsKey(Cell.PRESSURE)) {
            return onIsobar(states, value(Cell.PRESSURE), other);
        }
        if (given.containsKey(Cell.TEMPERATURE)) {
            return onIsotherm(states, value(Cell.TEMPERATURE), other);
        }
        throw notAPair();
    }

    private List<PhaseSplit> onIsobar(StateFinder states, double pressure, Cell other) {
        return switch (other) {
            case ENTHALPY -> List.of(states.atPressureAndEnthalpy(pressure, value(other)));
            case ENTROPY -> List.of(states.atPressureAndEntropy(pressure, value(other)));
            case DENSITY -> List.of(states.atPressureAndDensity(pressure, value(other)));
            case QUALITY -> states.allAtPressureAndVapourFraction(pressure, value(other));
            default -> throw notAPair();
        };
    }

    private List<PhaseSplit> onIsotherm(StateFinder states, double temperature, Cell other) {
        return switch (other) {
            case ENTHALPY -> states.allAtTemperatureAndEnthalpy(temperature, value(other));
            case ENTROPY -> states.allAtTemperatureAndEntropy(temperature, value(other));
            case DENSITY -> List.of(states.atTemperatureAndDensity(temperature, value(other)));
            case QUALITY -> states.allAtTemperatureAndVapourFraction(temperature, value(other));
            default -> throw notAPair();
        };
    }

    private IllegalArgumentException notAPair() {
        return new IllegalArgumentException(
                given.keySet().stream().map(c -> c.column).collect(Collectors.joining(" and "))
                        + " together name no state here; fill in both of one pair: " + PAIRS);
    }

    private boolean has(Cell first, Cell second) {
        return given.containsKey(first) && given.containsKey(second);
    }

    private double value(Cell cell) {
        Double value = given.get(cell);
        if (value == null) {
            throw new IllegalStateException(cell.column + " is not given");
        }
        return value;
    }
}

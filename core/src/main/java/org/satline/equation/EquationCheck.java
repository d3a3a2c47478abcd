package org.satline.equation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.satline.quantity.Parts;
import org.satline.resource.CsvResource.Row;
import org.satline.resource.SealedResources;

/**
 * A value printed to test an implementation of an equation, or in a table computed from it. {@code EquationSelfTest} of the equilibrium
 * room computes them.
 *
 * @param designation the substance, such as {@code R-718}
 * @param point at what kind of state
 * @param temperatureK temperature, K; empty for a boiling point
 * @param densityKgPerM3 density, kg/m3; for a state of one phase only
 * @param pressurePa pressure, Pa; for a boiling point only
 * @param quantity what is printed
 * @param printed the printed value in the unit of the quantity
 * @param relativeTolerance half of the last printed digit or, for figures from tables, as much as their source is trusted; a fraction of
 *     the printed value
 * @param source where it is printed
 */
public record EquationCheck(
        String designation,
        Point point,
        OptionalDouble temperatureK,
        OptionalDouble densityKgPerM3,
        OptionalDouble pressurePa,
        Quantity quantity,
        double printed,
        double relativeTolerance,
        String source) {
    private static final double LARGEST_TOLERANCE = 0.01;

    /** Kind of state. */
    public enum Point {
        /** One phase, given by temperature and density. */
        ONE_PHASE,
        /** Saturation, given by temperature. */
        SATURATION,
        /** Boiling, given by pressure. */
        BOILING
    }

    /** What is printed. */
    public enum Quantity {
        /** Pressure, Pa. */
        PRESSURE,
        /** Temperature, K. */
        TEMPERATURE,
        /** Isochoric heat capacity, J/(kg K). */
        ISOCHORIC_HEAT_CAPACITY,
        /** Speed of sound, m/s. */
        SPEED_OF_SOUND,
        /** Specific entropy, J/(kg K), zero as in the paper of the equation. */
        ENTROPY,
        /** Density of the saturated liquid, kg/m3. */
        LIQUID_DENSITY,
        /** Density of the saturated vapour, kg/m3. */
        VAPOUR_DENSITY,
        /** Specific enthalpy of the saturated vapour, J/kg; 200 kJ/kg for saturated liquid at 0 degC. */
        VAPOUR_ENTHALPY_IIR,
        /** Specific entropy of the saturated vapour, J/(kg K); 1 kJ/(kg K) for saturated liquid at 0 degC. */
        VAPOUR_ENTROPY_IIR
    }

    /** {@inheritDoc} */
    public EquationCheck {
        Parts.numbers("printed relativeTolerance", printed, relativeTolerance);
        Parts.required("designation point temperatureK", designation, point, temperatureK);
        Parts.required("densityKgPerM3 pressurePa quantity source", densityKgPerM3, pressurePa, quantity, source);
    }

    /**
     * Returns the check values of a substance.
     *
     * @param designation ISO 817 designation, such as {@code R-718}
     * @return its check values; empty if none is on record, or there is no equation
     */
    public static List<EquationCheck> of(String designation) {
        String file = PureEquationReader.folder(designation) + PureEquationReader.CHECK_VALUES;
        if (!EquationLibrary.standard().hasEquation(designation)
                || !SealedResources.core().lists(EquationCheck.class, file)) {
            return List.of();
        }
        return read(designation, file, EquationFiles.ofJar());
    }

    static List<EquationCheck> read(String designation, String file, EquationFiles files) {
        List<EquationCheck> checks = new ArrayList<>();
        for (Row row : files.table(
                        file,
                        "point",
                        "temperature_K",
                        "density_kg_per_m3",
                        "pressure_Pa",
                        "quantity",
                        "printed",
                        "relative_tolerance",
                        "source")
                .rows()) {
            checks.add(read(designation, row));
        }
        return List.copyOf(checks);
    }

    private static EquationCheck read(String designation, Row row) {
        EquationCheck check = new EquationCheck(
                designation,
                constant(Point.values(), row, "point"),
                row.optionalNumber("temperature_K"),
                row.optionalNumber("density_kg_per_m3"),
                row.optionalNumber("pressure_Pa"),
                constant(Quantity.values(), row, "quantity"),
                row.number("printed"),
                row.number("relative_tolerance"),
                row.text("source"));
        if (check.temperatureK.isPresent() == (check.point == Point.BOILING)
                || check.densityKgPerM3.isPresent() != (check.point == Point.ONE_PHASE)
                || check.pressurePa.isPresent() != (check.point == Point.BOILING)) {
            throw row.fault("a " + row.cell("point") + " point is given by other figures; one phase: temperature_K and"
                    + " density_kg_per_m3, saturation: temperature_K, boiling: pressure_Pa");
        }
        if (!(check.relativeTolerance > 0 && check.relativeTolerance <= LARGEST_TOLERANCE)) {
            throw row.fault("relative_tolerance is " + row.cell("relative_tolerance") + ", expected above 0, up to "
                    + LARGEST_TOLERANCE);
        }
        return check;
    }

    private static <E extends Enum<E>> E constant(E[] constants, Row row, String column) {
        String wanted =
                row.text(column).toUpperCase(Locale.ROOT).replace(",", "").replace(' ', '_');
        for (E constant : constants) {
            if (constant.name().equals(wanted)) {
                return constant;
            }
        }
        throw row.fault(column + " \"" + row.cell(column) + "\" is not known");
    }
}

package org.satline.tables.vectors;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.satline.audit.Auditor;
import org.satline.audit.answer.AuditOutcome;
import org.satline.audit.answer.AuditRow;
import org.satline.audit.answer.AuditedQuantity;
import org.satline.audit.answer.Comparison;
import org.satline.quantity.Length;

/** Saturation and one-phase answers of the solving engine, in the columns that {@code audit} reads. */
final class PropertyVectors {
    static final String HEADER = "id,refrigerant,quantity,temperature_K,pressure_Pa,answer,unit,altitude_m,tolerance";

    private static final List<String> PURES =
            List.of("R-22", "R-32", "R-134a", "R-152a", "R-290", "R-600a", "R-717", "R-744", "R-1234yf", "R-1234ze(E)");
    private static final List<String> BLENDS = List.of(
            "R-404A", "R-407C", "R-410A", "R-448A", "R-449A", "R-452A", "R-454B", "R-454C", "R-455A", "R-507A",
            "R-513A");
    private static final double[] TEMPERATURES = {243.15, 263.15, 283.15, 298.15};
    private static final double[] PRESSURES = {400e3, 1000e3, 2000e3};
    private static final double ALTITUDE_M = 1600;
    private static final double[] ALTITUDES_M = {500, 3000};
    /** States of one phase, K and Pa: vapours, a dense gas and liquids. */
    private static final double[][] STATES = {{320, 100e3}, {350, 1e6}, {400, 3e6}, {260, 3e6}, {285, 8e6}};

    static final String REFUSALS = "id,refrigerant,quantity,temperature_K,pressure_Pa,unit,error";
    private static final MathContext TEN_DIGITS = new MathContext(10);

    private final Auditor auditor = Auditor.standard();
    private final List<String> lines = new ArrayList<>();

    private PropertyVectors() {}

    static List<String> lines() {
        PropertyVectors made = new PropertyVectors();
        PURES.forEach(made::both);
        BLENDS.forEach(made::both);
        BLENDS.forEach(name -> {
            for (double pressure : PRESSURES) {
                made.add(name, AuditedQuantity.GLIDE, OptionalDouble.empty(), OptionalDouble.of(pressure), "K", 0);
            }
        });
        return made.lines;
    }

    private void both(String name) {
        for (double temperature : TEMPERATURES) {
            OptionalDouble t = OptionalDouble.of(temperature);
            OptionalDouble none = OptionalDouble.empty();
            add(name, AuditedQuantity.BUBBLE_PRESSURE, t, none, "kPa", 0);
            add(name, AuditedQuantity.DEW_PRESSURE, t, none, "kPa", 0);
            add(name, AuditedQuantity.DEW_PRESSURE, t, none, "psig", ALTITUDE_M);
            add(name, AuditedQuantity.BUBBLE_LIQUID_DENSITY, t, none, "kg/m3", 0);
            add(name, AuditedQuantity.DEW_VAPOUR_DENSITY, t, none, "kg/m3", 0);
            add(name, AuditedQuantity.BUBBLE_LIQUID_ENTHALPY, t, none, "kJ/kg", 0);
            add(name, AuditedQuantity.DEW_VAPOUR_ENTHALPY, t, none, "kJ/kg", 0);
            add(name, AuditedQuantity.DEW_VAPOUR_ENTROPY, t, none, "kJ/(kg K)", 0);
            add(name, AuditedQuantity.BUBBLE_LIQUID_ISOBARIC_HEAT_CAPACITY, t, none, "kJ/(kg K)", 0);
            add(name, AuditedQuantity.DEW_VAPOUR_ISOBARIC_HEAT_CAPACITY, t, none, "kJ/(kg K)", 0);
            add(name, AuditedQuantity.BUBBLE_LIQUID_SPEED_OF_SOUND, t, none, "m/s", 0);
            add(name, AuditedQuantity.DEW_VAPOUR_SPEED_OF_SOUND, t, none, "m/s", 0);
        }
        for (double pressure : PRESSURES) {
            OptionalDouble p = OptionalDouble.of(pressure);
            add(name, AuditedQuantity.BUBBLE_TEMPERATURE, OptionalDouble.empty(), p, "degC", 0);
            add(name, AuditedQuantity.DEW_TEMPERATURE, OptionalDouble.empty(), p, "degC", 0);
        }
        for (double altitude : ALTITUDES_M) {
            add(
                    name,
                    AuditedQuantity.BUBBLE_PRESSURE,
                    OptionalDouble.of(283.15),
                    OptionalDouble.empty(),
                    "psig",
                    altitude);
        }
        for (double[] state : STATES) {
            OptionalDouble t = OptionalDouble.of(state[0]);
            OptionalDouble p = OptionalDouble.of(state[1]);
            add(name, AuditedQuantity.DENSITY, t, p, "kg/m3", 0);
            add(name, AuditedQuantity.ENTHALPY, t, p, "kJ/kg", 0);
            add(name, AuditedQuantity.ENTROPY, t, p, "kJ/(kg K)", 0);
            add(name, AuditedQuantity.ISOBARIC_HEAT_CAPACITY, t, p, "kJ/(kg K)", 0);
            add(name, AuditedQuantity.SPEED_OF_SOUND, t, p, "m/s", 0);
        }
    }

    /** Questions without an answer, each with what stands in its way. */
    static List<String> refusals() {
        PropertyVectors made = new PropertyVectors();
        for (String name : List.of("R-22", "R-134a", "R-744", "R-410A", "R-407C")) {
            made.refuse(name, AuditedQuantity.DEW_PRESSURE, 500, 0, "kPa");
            made.refuse(name, AuditedQuantity.BUBBLE_PRESSURE, 20, 0, "kPa");
            made.refuse(name, AuditedQuantity.BUBBLE_TEMPERATURE, 0, 100e6, "degC");
            made.refuse(name, AuditedQuantity.DEW_TEMPERATURE, 0, -1, "degC");
            made.refuse(name, AuditedQuantity.DEW_VAPOUR_DENSITY, 280, 400e3, "kg/m3");
            made.refuse(name, AuditedQuantity.DENSITY, 280, 0, "kg/m3");
            made.refuse(name, AuditedQuantity.DEW_PRESSURE, 280, 0, "psi");
        }
        made.refuse("R-9999", AuditedQuantity.DEW_PRESSURE, 280, 0, "kPa");
        return made.lines;
    }

    private void refuse(String name, AuditedQuantity quantity, double temperature, double pressure, String unit) {
        OptionalDouble t = temperature == 0 ? OptionalDouble.empty() : OptionalDouble.of(temperature);
        OptionalDouble p = pressure == 0 ? OptionalDouble.empty() : OptionalDouble.of(pressure);
        AuditOutcome outcome = auditor.compare(row(name, quantity, t, p, unit));
        if (!(outcome instanceof AuditOutcome.NotComparable refused)) {
            throw new IllegalStateException(name + " " + quantity + " has an answer");
        }
        lines.add(String.join(
                ",",
                "r" + (lines.size() + 1),
                name,
                quantity.label(),
                cell(t),
                cell(p),
                unit,
                refused.reason().name().toLowerCase(Locale.ROOT).replace('_', '-')));
    }

    private static AuditRow row(
            String name, AuditedQuantity quantity, OptionalDouble temperature, OptionalDouble pressure, String unit) {
        return new AuditRow(
                "",
                name,
                quantity.label(),
                temperature,
                pressure,
                "0.0000000000",
                unit,
                java.util.Optional.empty(),
                OptionalDouble.empty());
    }

    private void add(
            String name,
            AuditedQuantity quantity,
            OptionalDouble temperature,
            OptionalDouble pressure,
            String unit,
            double altitude) {
        AuditRow row = row(name, quantity, temperature, pressure, unit).at(Length.ofMetres(altitude));
        if (!(auditor.compare(row) instanceof AuditOutcome.Compared compared)) {
            return; // a state that the refrigerant does not have
        }
        Comparison c = compared.comparison();
        lines.add(String.join(
                ",",
                "p" + (lines.size() + 1),
                name,
                quantity.label(),
                cell(temperature),
                cell(pressure),
                digits(c.ours()),
                unit,
                altitude == 0 ? "" : String.format(Locale.ROOT, "%.0f", altitude),
                new BigDecimal(c.tolerance().width()).round(new MathContext(3)).toPlainString()));
    }

    static String digits(double value) {
        return new BigDecimal(value).round(TEN_DIGITS).toPlainString();
    }

    static String cell(OptionalDouble value) {
        return value.isPresent() ? Double.toString(value.getAsDouble()) : "";
    }
}

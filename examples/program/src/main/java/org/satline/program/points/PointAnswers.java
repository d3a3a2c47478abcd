package org.satline.program.points;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.satline.equation.MixtureEvidence;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.PhaseSplit;
import org.satline.equilibrium.ReferenceState;
import org.satline.program.file.CsvAnswer;
import org.satline.program.file.CsvRow;
import org.satline.program.file.Shown;
import org.satline.program.page.Printed;
import org.satline.quantity.UnitSystem;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.Engine;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/** Answers rows of {@code points}. A row that cannot be computed is answered with the reason; nothing is thrown. Thread-safe. */
public final class PointAnswers {
    private static final Wording WORDS = Wording.of(Language.ENGLISH, UnitSystem.SI);

    /** Columns of the input. */
    public static final List<String> INPUT = List.of("id", "refrigerant", "quantity", "temperature_K", "pressure_Pa");

    /** Columns of the input that a file may leave out: other pairs that name a state. */
    public static final List<String> OPTIONAL = StatePair.OPTIONAL;

    /** Columns of the output. */
    public static final List<String> OUTPUT = List.of("id", "refrigerant", "quantity", "value", "unit", "note");

    private final Engine engine;
    private final Catalogue catalogue = Catalogue.standard();
    private final PointValues solved = new PointValues();
    private final TableValues tables = new TableValues();
    private final Map<String, List<String>> warnings = new ConcurrentHashMap<>();

    /**
     * Makes an answerer.
     *
     * @param engine where saturation figures come from
     */
    public PointAnswers(Engine engine) {
        this.engine = engine;
    }

    /**
     * Answers one row.
     *
     * @param row a row with the columns of {@link #INPUT} and any of {@link #OPTIONAL}
     * @return cells for the columns of {@link #OUTPUT}
     */
    public CsvAnswer answer(CsvRow row) {
        List<String> cells = new ArrayList<>(List.of(row.raw("id"), row.raw("refrigerant"), row.raw("quantity")));
        try {
            cells.addAll(computed(row));
            return new CsvAnswer(cells, true);
        } catch (RuntimeException e) {
            // Whatever stopped this row must not stop the others; the note carries it.
            String reason = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
            cells.addAll(List.of("", "", Shown.line(reason)));
            return new CsvAnswer(cells, false);
        }
    }

    private List<String> computed(CsvRow row) {
        row.fault().ifPresent(fault -> {
            throw new IllegalArgumentException(fault + "; give each cell, empty where it has no value");
        });
        PointQuantity quantity = PointQuantity.ofLabel(row.required("quantity"));
        FluidModel model = solved.model(catalogue.find(row.required("refrigerant")));
        return quantity.given() == PointQuantity.Given.STATE
                ? ofState(model, quantity, row)
                : onLine(model, quantity, row);
    }

    private List<String> ofState(FluidModel model, PointQuantity quantity, CsvRow row) {
        StatePair pair = StatePair.of(row);
        PhaseSplit state = pair.solve(model, quantity);
        List<String> notes = new ArrayList<>();
        if (state.phases() == PhaseSplit.Phases.LIQUID_AND_VAPOUR && quantity != PointQuantity.PHASE) {
            notes.add("liquid and vapour together");
        }
        boolean reference = quantity.needsReference() || pair.needsReference();
        if (quantity == PointQuantity.PHASE) {
            return cells(model, StatePair.label(state.phases()), quantity, reference, notes);
        }
        double value = solved.ofState(model, quantity, state, row.text("component"));
        return cells(model, printed(quantity, value), quantity, reference, notes);
    }

    private List<String> onLine(FluidModel model, PointQuantity quantity, CsvRow row) {
        Optional<Double> temperature = row.number("temperature_K");
        Optional<Double> pressure = row.number("pressure_Pa");
        checkGiven(quantity, temperature.isPresent(), pressure.isPresent());
        if (StatePair.hasMoreThanTemperatureAndPressure(row)) {
            throw new IllegalArgumentException(ambiguous(quantity.label(), "temperature_K or pressure_Pa alone"));
        }
        List<String> notes = new ArrayList<>();
        double value;
        if (engine == Engine.TABLE && tables.has(model.refrigerant(), quantity)) {
            value = tables.value(model.refrigerant(), quantity, temperature, pressure);
        } else {
            value = temperature
                    .map(t -> solved.atTemperature(model, quantity, t))
                    .orElseGet(() -> solved.atPressure(model, quantity, pressure.orElseThrow()));
            if (engine == Engine.TABLE) {
                notes.add("no table holds it: solved from the equation");
            }
        }
        return cells(model, printed(quantity, value), quantity, quantity.needsReference(), notes);
    }

    private static String printed(PointQuantity quantity, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(quantity.label() + " has no finite value at this state");
        }
        return Printed.exact(value);
    }

    private List<String> cells(
            FluidModel model, String value, PointQuantity quantity, boolean reference, List<String> notes) {
        if (reference && model.referenceState() != ReferenceState.IIR) {
            notes.add("reference state: " + model.referenceState().description());
        }
        notes.addAll(warnings.computeIfAbsent(
                model.refrigerant().designation(),
                name -> MixtureEvidence.of(model.refrigerant()).warnings().stream()
                        .map(WORDS::of)
                        .toList()));
        return List.of(value, quantity.unit(), String.join("; ", notes));
    }

    private static void checkGiven(PointQuantity quantity, boolean temperature, boolean pressure) {
        String name = quantity.label();
        switch (quantity.given()) {
            case TEMPERATURE_OR_PRESSURE -> {
                check(!(temperature && pressure), ambiguous(name, "one of them"));
                check(temperature || pressure, name + " needs temperature_K or pressure_Pa; fill in one of them");
            }
            case TEMPERATURE -> {
                check(!(temperature && pressure), ambiguous(name, "temperature_K alone"));
                check(temperature, name + " is found from temperature_K; fill it in and leave pressure_Pa empty");
            }
            case PRESSURE -> {
                check(!(temperature && pressure), ambiguous(name, "pressure_Pa alone"));
                check(pressure, name + " is found from pressure_Pa; fill it in and leave temperature_K empty");
            }
            case STATE -> throw new IllegalStateException(name + " lies on no line");
        }
    }

    private static String ambiguous(String name, String wanted) {
        return "ambiguous: " + name + " lies on a saturation line, where temperature and pressure fix each other; give "
                + wanted;
    }

    private static void check(boolean holds, String message) {
        if (!holds) {
            throw new IllegalArgumentException(message);
        }
    }
}

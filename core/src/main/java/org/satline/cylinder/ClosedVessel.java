package org.satline.cylinder;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.PhaseSplit;
import org.satline.equilibrium.PhaseSplit.Phases;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Step;
import org.satline.explanation.Subject;
import org.satline.filling.VesselPoint;
import org.satline.quantity.Density;
import org.satline.quantity.Mass;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.Volume;

/**
 * A cylinder as what it is: a vessel of fixed volume with a fixed mass inside. Its pressure and liquid level follow from the temperature
 * alone. The vessel is taken as rigid, which errs on the safe side. Immutable, thread-safe.
 */
public final class ClosedVessel {
    /** Pressures are looked for up to this temperature, K; relief devices of the trade open well below what is reached there. */
    private static final double WARMEST_K = Temperature.ofCelsius(100).kelvins();
    /** Absolute accuracy of temperatures, K. */
    private static final double ACCURACY_K = 1e-7;

    /** How far inside the range of the equation the coldest temperature is taken, K: its end is known to round-off only. */
    private static final double EDGE_K = 1e-6;

    private static final double NEARLY_FULL = 0.90;
    /** 49 CFR 173.301a(c): what the pressure at 131 degF may be of the service pressure. */
    static final double OVER_SERVICE = 1.25;

    static final String OVER_SERVICE_SOURCE = "49 CFR 173.301a(c)";
    private static final String ARITHMETIC = "arithmetic";
    private static final String EQUATION = ", equation of state";

    private final FluidModel model;
    private final Volume volume;
    private final Mass contents;
    private final double density;

    private ClosedVessel(FluidModel model, Volume volume, Mass contents) {
        this.model = model;
        this.volume = volume;
        this.contents = contents;
        this.density = contents.kilograms() / volume.cubicMetres();
    }

    /**
     * Puts contents into a vessel.
     *
     * @param model the equation of what is inside
     * @param volume the inner volume, above zero
     * @param contents the mass inside, above zero
     * @return the vessel
     */
    public static ClosedVessel of(FluidModel model, Volume volume, Mass contents) {
        Parts.required("model volume contents", model, volume, contents);
        if (!(volume.cubicMetres() > 0)) {
            throw new IllegalArgumentException(
                    "volume " + volume + " is not above zero; take it from the water capacity");
        }
        if (!(contents.kilograms() > 0)) {
            throw new IllegalArgumentException(
                    "contents " + contents + " are not above zero; an empty vessel has no saturation");
        }
        return new ClosedVessel(model, volume, contents);
    }

    /**
     * Returns the mass inside over the volume.
     *
     * @return kg/m3
     */
    public double overallDensity() {
        return density;
    }

    /**
     * Returns pressure, liquid level and vapour mass at a temperature.
     *
     * @param temperature the temperature of the whole vessel, at rest
     * @return its condition, with a caution where liquid fills it or nearly so, or fills it before it gets that warm
     * @throws org.satline.quantity.OutOfValidityException if the temperature is outside the range of the equation
     */
    public VesselCondition at(Temperature temperature) {
        return at(temperature, Optional.empty());
    }

    /**
     * The same, the pressure held against the service pressure marked on the cylinder too.
     *
     * @param temperature the temperature of the whole vessel, at rest
     * @param servicePressure the marked service pressure, absolute; nothing where none is known
     * @return its condition, with a caution also where the pressure is above 5/4 of the mark, what 49 CFR 173.301a(c) allows at 131 degF
     * @throws org.satline.quantity.OutOfValidityException if the temperature is outside the range of the equation
     */
    public VesselCondition at(Temperature temperature, Optional<Pressure> servicePressure) {
        PhaseSplit split = model.states().atTemperatureAndDensity(temperature.kelvins(), density);
        boolean both = split.phases() == Phases.LIQUID_AND_VAPOUR;
        Optional<Double> level =
                split.phases() == Phases.SUPERCRITICAL ? Optional.empty() : Optional.of(split.liquidVolumeFraction());
        double vapour = both ? split.vapourFraction() : split.phases() == Phases.LIQUID ? 0 : 1;
        List<Step> steps = new ArrayList<>();
        Figure overall = Figure.of("rho", Density.ofKilogramsPerCubicMetre(density));
        Figure pressure = Figure.of("p", Pressure.ofPascals(split.pressurePa()));
        String engine = model.refrigerant().designation() + EQUATION;
        steps.add(new Step(
                "overallDensity",
                "rho = m / V",
                List.of(Figure.of("m", contents), Figure.of("V", volume)),
                overall,
                ARITHMETIC));
        List<Figure> state = List.of(Figure.of("T", temperature), overall);
        steps.add(new Step("vesselPressure", "p(T, rho)", state, pressure, engine));
        level.ifPresent(share ->
                steps.add(new Step("liquidLevel", "V_l / V", state, Figure.of("level", 100 * share, "%"), engine)));
        return new VesselCondition(
                temperature,
                split.phases(),
                Pressure.ofPascals(split.pressurePa()),
                level,
                Mass.ofKilograms(vapour * contents.kilograms()),
                cautions(split, level, servicePressure),
                steps);
    }

    private List<Finding> cautions(PhaseSplit split, Optional<Double> level, Optional<Pressure> servicePressure) {
        List<Finding> found = new ArrayList<>();
        boolean full = split.phases() == Phases.LIQUID
                || (split.phases() == Phases.SUPERCRITICAL && !(liquidFull() instanceof VesselPoint.Never));
        if (full) {
            found.add(caution(CylinderCode.LIQUID_FULL, split).citing("49 CFR 173.304(b)"));
        } else if (level.orElse(0.0) > NEARLY_FULL) {
            found.add(caution(CylinderCode.NEARLY_FULL, split, Figure.of("level", 100 * level.orElseThrow(), "%")));
        }
        servicePressure
                .filter(mark -> split.pressurePa() > OVER_SERVICE * mark.pascals())
                .ifPresent(mark -> found.add(caution(
                                CylinderCode.OVER_PRESSURE,
                                split,
                                Figure.of("pressure", Pressure.ofPascals(split.pressurePa())),
                                Figure.of("mark", mark))
                        .citing(OVER_SERVICE_SOURCE)));
        return List.copyOf(found);
    }

    /** What would come at a temperature; whether it is a danger now, whoever asks for the present temperature says. */
    private Finding caution(CylinderCode code, PhaseSplit split, Figure... more) {
        List<Figure> figures = new ArrayList<>(List.of(
                Figure.of("contents", contents),
                Figure.of("volume", volume),
                Figure.of("temperature", Temperature.ofKelvins(split.temperatureK()))));
        figures.addAll(List.of(more));
        Subject gas = new Subject(Subject.Kind.REFRIGERANT, model.refrigerant().designation());
        return new Finding(Severity.CAUTION, code, gas, figures, Finding.PRACTICE);
    }

    /**
     * Returns the temperature at which liquid fills the vessel.
     *
     * @return the temperature; never for contents too light for that, whose liquid boils away instead
     */
    public VesselPoint liquidFull() {
        return VesselPoint.liquidFull(
                model.bubbleTemperatureRange(),
                t -> model.bubbleAtTemperature(t).saturated().density(),
                density);
    }

    /**
     * Returns the temperature at which the pressure reaches a figure, such as the marked service pressure.
     *
     * @param pressure the pressure, absolute
     * @return the temperature; never where it lies above 100 degC
     */
    public VesselPoint reaches(Pressure pressure) {
        double low = model.minTemperatureK() + EDGE_K;
        if (pressureAt(low) >= pressure.pascals()) {
            return new VesselPoint.Always(Temperature.ofKelvins(low));
        }
        double high = warmestWithin(pressure.pascals(), low);
        if (!(pressureAt(high) >= pressure.pascals())) {
            return new VesselPoint.Never(Figure.of("upTo", Temperature.ofKelvins(high)));
        }
        return new VesselPoint.At(Temperature.ofKelvins(
                new BrentSolver(ACCURACY_K).solve(200, t -> pressureAt(t) - pressure.pascals(), low, high)));
    }

    /** Walks up until the pressure is passed, so that no pressure far beyond the equation's range is ever asked for. */
    private double warmestWithin(double pressurePa, double from) {
        double at = from;
        while (at < WARMEST_K && pressureAt(at) < pressurePa) {
            at = Math.min(at + 5, WARMEST_K);
        }
        return at;
    }

    private double pressureAt(double temperatureK) {
        return model.states().atTemperatureAndDensity(temperatureK, density).pressurePa();
    }

    /**
     * Returns the condition over a span of temperatures.
     *
     * @param from the coldest
     * @param to the warmest, above it
     * @param count how many, from 2 to 10000, evenly spaced, both ends included
     * @return one condition each
     */
    public List<VesselCondition> over(Temperature from, Temperature to, int count) {
        if (!(count >= 2 && count <= 10_000)) {
            throw new IllegalArgumentException("number of temperatures " + count + " is outside [2, 10000]");
        }
        if (!(to.kelvins() > from.kelvins())) {
            throw new IllegalArgumentException(
                    "span from " + from + " to " + to + " runs backwards; give the colder end first");
        }
        List<VesselCondition> conditions = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double share = (double) i / (count - 1);
            conditions.add(at(Temperature.ofKelvins(from.kelvins() * (1 - share) + to.kelvins() * share)));
        }
        return List.copyOf(conditions);
    }
}

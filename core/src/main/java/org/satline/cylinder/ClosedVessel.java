package org.satline.cylinder;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.PhaseSplit;
import org.satline.equilibrium.PhaseSplit.Phases;
import org.satline.explanation.Step;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.Volume;
import org.satline.safety.Caution;

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
    private static final double OVER_SERVICE = 1.25;

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
        Objects.requireNonNull(model, "model");
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
        PhaseSplit split = model.splitAtDensity(temperature.kelvins(), density);
        boolean both = split.phases() == Phases.LIQUID_AND_VAPOUR;
        Optional<Double> level =
                split.phases() == Phases.SUPERCRITICAL ? Optional.empty() : Optional.of(split.liquidVolumeFraction());
        double vapour = both ? split.vapourFraction() : split.phases() == Phases.LIQUID ? 0 : 1;
        List<Step> steps = new ArrayList<>();
        steps.add(new Step(
                "overall density",
                "rho = m / V",
                Figures.mass(contents.kilograms()) + " / " + Figures.volume(volume.cubicMetres()),
                Figures.density(density),
                "arithmetic"));
        steps.add(new Step(
                "pressure and liquid level",
                "equilibrium at T and rho",
                "T = " + Figures.temperature(temperature.kelvins()) + ", rho = " + Figures.density(density),
                Figures.pressure(split.pressurePa())
                        + level.map(share ->
                                        String.format(Locale.ROOT, ", liquid fills %.1f %% of the volume", 100 * share))
                                .orElse(", one phase above the critical temperature, no level"),
                "equation of state of " + gas()));
        return new VesselCondition(
                temperature,
                split.phases(),
                Pressure.ofPascals(split.pressurePa()),
                level,
                Mass.ofKilograms(vapour * contents.kilograms()),
                cautions(split, level, servicePressure),
                steps);
    }

    private List<Caution> cautions(PhaseSplit split, Optional<Double> level, Optional<Pressure> servicePressure) {
        List<Caution> found = new ArrayList<>(filled(split, level));
        servicePressure
                .filter(mark -> split.pressurePa() > OVER_SERVICE * mark.pascals())
                .ifPresent(mark -> found.add(new Caution(
                        "OVER-PRESSURE: " + where() + " reach "
                                + Figures.pressure(split.pressurePa()) + " at "
                                + Figures.temperature(split.temperatureK())
                                + ", above 5/4 of the marked service pressure of " + Figures.pressure(mark.pascals())
                                + " (both absolute); keep it cold, keep people away, move contents out",
                        "49 CFR 173.301a(c); equation of state")));
        return List.copyOf(found);
    }

    private List<Caution> filled(PhaseSplit split, Optional<Double> level) {
        Temperature temperature = Temperature.ofKelvins(split.temperatureK());
        Phases phases = split.phases();
        if (phases == Phases.SUPERCRITICAL && density >= lightestFullLiquid()) {
            return List.of(new Caution(
                    "LIQUID-FULL: " + where() + " filled it with liquid before they grew as warm as "
                            + Figures.temperature(temperature.kelvins())
                            + ", where liquid and vapour are one; every further degree raises the pressure by bars until the relief device"
                            + " opens or the cylinder bursts; keep it cold, keep people away, move contents out",
                    "arithmetic on the equation of state; 49 CFR 173.304(b)"));
        }
        if (phases == Phases.LIQUID) {
            return List.of(new Caution(
                    "LIQUID-FULL: " + where() + " leave no vapour at " + Figures.temperature(temperature.kelvins())
                            + "; every further degree raises the pressure by several bar until the relief device opens or the cylinder "
                            + "bursts; keep it cold, keep people away, move contents out",
                    "arithmetic on the equation of state; 49 CFR 173.304(b)"));
        }
        if (level.orElse(0.0) > NEARLY_FULL) {
            return List.of(new Caution(
                    String.format(
                            Locale.ROOT,
                            "%s fill %.0f %% of the volume with liquid at %s; keep the cylinder cool",
                            where(),
                            100 * level.orElseThrow(),
                            Figures.temperature(temperature.kelvins())),
                    "common practice, no source"));
        }
        return List.of();
    }

    private String where() {
        return Figures.mass(contents.kilograms()) + " of " + gas() + " in " + Figures.volume(volume.cubicMetres());
    }

    /** The density of the liquid where its line ends: what is lighter never fills a vessel with liquid. */
    private double lightestFullLiquid() {
        return model.bubbleAtTemperature(model.bubbleTemperatureRange().high())
                .saturated()
                .density();
    }

    /**
     * Returns the temperature at which liquid fills the vessel.
     *
     * @return the temperature; never for contents too light for that, whose liquid boils away instead
     */
    public VesselPoint liquidFull() {
        double low = model.bubbleTemperatureRange().low();
        double high = model.bubbleTemperatureRange().high();
        if (density >= model.bubbleAtTemperature(low).saturated().density()) {
            return new VesselPoint.Always(Temperature.ofKelvins(low));
        }
        double least = lightestFullLiquid();
        if (density <= least) {
            return new VesselPoint.Never("contents of " + Figures.density(density) + " stay below the "
                    + Figures.density(least) + " of the liquid where the saturation line of " + gas() + " ends");
        }
        return new VesselPoint.At(Temperature.ofKelvins(new BrentSolver(ACCURACY_K)
                .solve(200, t -> model.bubbleAtTemperature(t).saturated().density() - density, low, high)));
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
            return new VesselPoint.Never("the pressure stays below " + Figures.pressure(pressure.pascals()) + " up to "
                    + Figures.temperature(high));
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
        return model.splitAtDensity(temperatureK, density).pressurePa();
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

    private String gas() {
        return model.refrigerant().designation();
    }
}

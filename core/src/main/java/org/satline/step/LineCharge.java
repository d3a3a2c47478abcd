package org.satline.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.satline.equilibrium.FluidModel;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Step;
import org.satline.explanation.Subject;
import org.satline.measurement.Reading;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Density;
import org.satline.quantity.Length;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.Volume;
import org.satline.saturation.SaturationCurve;

/**
 * The refrigerant in a pipe or hose. Immutable, thread-safe.
 *
 * @param mass the mass
 * @param cautions what to know before it is taken as the amount to add
 * @param steps the derivation
 */
public record LineCharge(Mass mass, List<Finding> cautions, List<Step> steps) {
    private static final String EQUATION_SOURCE = "equation of state of ";

    /** {@inheritDoc} */
    public LineCharge {
        Objects.requireNonNull(mass, "mass");
        cautions = Parts.list("cautions", cautions);
        steps = Parts.list("steps", steps);
    }

    /** What fills the line. */
    public sealed interface Filling {
        /**
         * Returns the density.
         *
         * @return kg/m3
         */
        Density density();

        /**
         * Returns how the density was found.
         *
         * @return one step
         */
        Step step();
    }

    private record Found(Density density, Step step) implements Filling {}

    /**
     * Liquid at its bubble point, as in a liquid line; subcooled liquid is a little denser, by about 1 % for 5 K.
     *
     * @param curve the saturation curve
     * @param temperature the temperature of the liquid
     * @return the filling
     */
    public static Filling liquid(SaturationCurve curve, Temperature temperature) {
        return found(curve.bubbleLiquidDensity(temperature), "rho_l(T, x = 0)", temperature, curve.source());
    }

    /**
     * Vapour at its dew point.
     *
     * @param curve the saturation curve
     * @param temperature the temperature of the vapour
     * @return the filling
     */
    public static Filling saturatedVapour(SaturationCurve curve, Temperature temperature) {
        return found(curve.dewVapourDensity(temperature), "rho_v(T, x = 1)", temperature, curve.source());
    }

    /**
     * One phase at a temperature and pressure, such as the superheated vapour of a suction line.
     *
     * @param model the equation of the refrigerant
     * @param temperature the temperature
     * @param pressure the pressure, absolute
     * @return the filling
     * @throws org.satline.quantity.OutOfValidityException if two phases are present there or the state is out of range
     */
    public static Filling onePhase(FluidModel model, Temperature temperature, Pressure pressure) {
        double density =
                model.stateAt(temperature.kelvins(), pressure.pascals()).density();
        return found(
                Density.ofKilogramsPerCubicMetre(density),
                "rho(T, p)",
                temperature,
                EQUATION_SOURCE + model.refrigerant().designation());
    }

    private static Filling found(Density density, String formula, Temperature temperature, String source) {
        return new Found(
                density,
                new Step(
                        "densityInLine",
                        formula,
                        List.of(Figure.of("T", temperature)),
                        Figure.of("rho", density),
                        source));
    }

    /**
     * Returns what a volume holds, such as that of a hose.
     *
     * @param volume the inner volume
     * @param filling what fills it
     * @return the mass
     */
    public static LineCharge of(Volume volume, Filling filling) {
        Parts.required("volume filling", volume, filling);
        return of(volume, filling, new Step("volume", "V", List.of(), Figure.of("V", volume), "given"));
    }

    /**
     * Returns what a length of tube holds.
     *
     * @param tube the tube
     * @param length its length
     * @param filling what fills it
     * @return the mass
     */
    public static LineCharge of(CopperTube tube, Length length, Filling filling) {
        Parts.required("tube length filling", tube, length, filling);
        Volume volume = tube.volume(length);
        return of(
                volume,
                filling,
                new Step(
                        "volumeOfTube",
                        "V = pi d^2 / 4 L",
                        List.of(Figure.of("d", tube.insideDiameter()), Figure.of("L", length)),
                        Figure.of("V", volume),
                        tube.source()));
    }

    private static LineCharge of(Volume volume, Filling filling, Step volumeStep) {
        double kilograms = volume.cubicMetres() * filling.density().kilogramsPerCubicMetre();
        return new LineCharge(
                Mass.ofKilograms(kilograms),
                List.of(),
                List.of(
                        volumeStep,
                        filling.step(),
                        new Step(
                                "massInLine",
                                "m = rho V",
                                List.of(Figure.of("rho", filling.density()), Figure.of("V", volume)),
                                Figure.of("m", Mass.ofKilograms(kilograms)),
                                "arithmetic")));
    }

    /**
     * Returns what a line set longer than the one that the factory charge covers needs in addition.
     *
     * @param liquidLine the tube of the liquid line
     * @param liquid what fills it
     * @param vapourLine the tube of the suction line
     * @param vapour what fills it
     * @param coveredLength the length that the factory charge covers
     * @param actualLength the length as built, not below the covered one
     * @return the mass to add, with the caution that the maker's figure goes first
     * @throws IllegalArgumentException if the line set is shorter than covered: then nothing is added, and the maker says what to do
     */
    public static LineCharge additional(
            CopperTube liquidLine,
            Filling liquid,
            CopperTube vapourLine,
            Filling vapour,
            Length coveredLength,
            Length actualLength) {
        Parts.required("liquidLine liquid vapourLine vapour", liquidLine, liquid, vapourLine, vapour);
        Parts.required("coveredLength actualLength", coveredLength, actualLength);
        double longer = actualLength.metres() - coveredLength.metres();
        if (!(longer >= 0)) {
            throw new IllegalArgumentException("line length " + actualLength + " is below the " + coveredLength
                    + " that the factory charge covers; nothing is added, see the maker's table");
        }
        Length extra = Length.ofMetres(longer);
        LineCharge inLiquid = of(liquidLine, extra, liquid);
        LineCharge inVapour = of(vapourLine, extra, vapour);
        List<Step> steps = new ArrayList<>(inLiquid.steps());
        steps.addAll(inVapour.steps());
        Mass sum = inLiquid.mass().plus(inVapour.mass());
        steps.add(new Step(
                "additionalCharge",
                "m = m_liquid + m_suction",
                List.of(
                        Figure.of("m_liquid", inLiquid.mass()),
                        Figure.of("m_suction", inVapour.mass()),
                        Figure.of("L_extra", extra)),
                Figure.of("m", sum),
                "arithmetic"));
        return new LineCharge(
                sum,
                List.of(Finding.of(Severity.CAUTION, StepCode.MAKERS_FIGURE_FIRST, Subject.reading("system.lineSet"))),
                steps);
    }

    /**
     * Charge by weight of an evacuated system: the charge of the plate, more for a line set longer than the plate covers,
     * and what the scale under the source cylinder reads
     * when it is in. Immutable, thread-safe.
     *
     * @param weighIn what goes in, with its uncertainty from plate, line set and scale
     * @param scaleAtEnd what the scale under the source reads then
     * @param steps how it was found
     */
    public record FirstFilling(Reading<Mass> weighIn, MassDifference scaleAtEnd, List<Step> steps) {
        /** A plate prints its charge to two or three digits: half of the last one at best; common practice, no source. */
        private static final double PLATE_LIMIT = 0.01;
        /**
         * Density and bore of a line are known within that share: temperature along it and the tolerance of the tube; our
         * choice.
         */
        private static final double LINE_LIMIT = 0.15;

        /** {@inheritDoc} */
        public FirstFilling {
            Parts.required("weighIn scaleAtEnd", weighIn, scaleAtEnd);
            steps = Parts.list("steps", steps);
        }

        /**
         * Works out a filling.
         *
         * @param plate charge of the plate; above 0
         * @param longerLine what a line set longer than the plate covers takes more
         * @param scale what the scale under the source cylinder reads before, with the standard uncertainty of a
         *     difference of two readings
         * @return the filling
         * @throws IllegalArgumentException if the plate states no charge, or more would go in than a scale that was
         *     not zeroed shows to be there
         */
        public static FirstFilling of(Mass plate, Optional<LineCharge> longerLine, Reading<Mass> scale) {
            Parts.required("plate longerLine scale", plate, longerLine, scale);
            FirstFilling filling =
                    of(plate, longerLine, scale.budget(), scale.value().differenceFrom(Mass.ZERO));
            if (!(filling.weighIn().value().kilograms() < scale.value().kilograms())) {
                throw new IllegalArgumentException(
                        "filling of " + filling.weighIn().value() + " is not below what stands on the scale, "
                                + scale.value() + "; take a fuller cylinder");
            }
            return filling;
        }

        /**
         * Works out a filling by a scale that may have been zeroed.
         *
         * @param plate charge of the plate; above 0
         * @param longerLine what a line set longer than the plate covers takes more
         * @param scale uncertainty of a difference of two readings of the scale, kg
         * @param shown what the scale shows before
         * @return the filling
         * @throws IllegalArgumentException if the plate states no charge
         */
        public static FirstFilling of(
                Mass plate, Optional<LineCharge> longerLine, UncertaintyBudget scale, MassDifference shown) {
            Parts.required("plate longerLine scale shown", plate, longerLine, scale, shown);
            if (!(plate.kilograms() > 0)) {
                throw new IllegalArgumentException(
                        "charge of the plate " + plate + " is not above 0; read it again, or take the maker's figure");
            }
            Mass more = longerLine.map(LineCharge::mass).orElse(Mass.ZERO);
            Mass sum = plate.plus(more);
            UncertaintyBudget budget = UncertaintyBudget.of("plate", PLATE_LIMIT * plate.kilograms() / Math.sqrt(3))
                    .plus(UncertaintyBudget.of("line set", LINE_LIMIT * more.kilograms() / Math.sqrt(3)))
                    .plus(scale);
            Reading<Mass> weighIn = Reading.of(sum, budget.combined(), "charge by weight");
            MassDifference end = shown.minus(sum.differenceFrom(Mass.ZERO));
            Step step = new Step(
                    "chargeByWeight",
                    "m = m_plate + m_lines",
                    List.of(
                            Figure.of("m_plate", plate),
                            Figure.of("m_lines", more),
                            Figure.of("u", Mass.ofKilograms(budget.combined()))),
                    Figure.of("m", sum),
                    "arithmetic");
            return new FirstFilling(weighIn, end, List.of(step));
        }
    }
}

package org.satline.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.satline.equilibrium.FluidModel;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Step;
import org.satline.explanation.Subject;
import org.satline.quantity.Density;
import org.satline.quantity.Length;
import org.satline.quantity.Mass;
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
}

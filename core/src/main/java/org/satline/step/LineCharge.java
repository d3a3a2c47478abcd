package org.satline.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.satline.equilibrium.FluidModel;
import org.satline.explanation.Step;
import org.satline.quantity.Density;
import org.satline.quantity.Length;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.Volume;
import org.satline.safety.Caution;
import org.satline.saturation.SaturationCurve;

/**
 * The refrigerant in a pipe or hose. Immutable, thread-safe.
 *
 * @param mass the mass
 * @param cautions what to know before it is taken as the amount to add
 * @param steps the derivation
 */
public record LineCharge(Mass mass, List<Caution> cautions, List<Step> steps) {
    /** {@inheritDoc} */
    public LineCharge {
        Objects.requireNonNull(mass, "mass");
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
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
        return found(
                curve.bubbleLiquidDensity(temperature), "rho_l(T) at the bubble point", temperature, curve.source());
    }

    /**
     * Vapour at its dew point.
     *
     * @param curve the saturation curve
     * @param temperature the temperature of the vapour
     * @return the filling
     */
    public static Filling saturatedVapour(SaturationCurve curve, Temperature temperature) {
        return found(curve.dewVapourDensity(temperature), "rho_v(T) at the dew point", temperature, curve.source());
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
                String.format(Locale.ROOT, "rho(T, p) at %.2f kPa", pressure.kilopascals()),
                temperature,
                "equation of state of " + model.refrigerant().designation());
    }

    private static Filling found(Density density, String formula, Temperature temperature, String source) {
        return new Found(
                density,
                new Step(
                        "density in the line",
                        formula,
                        String.format(Locale.ROOT, "T = %.2f degC", temperature.celsius()),
                        String.format(Locale.ROOT, "%.3f kg/m3", density.kilogramsPerCubicMetre()),
                        source));
    }

    /**
     * Returns what a volume holds, such as that of {@link Hose#volume()}.
     *
     * @param volume the inner volume
     * @param filling what fills it
     * @return the mass
     */
    public static LineCharge of(Volume volume, Filling filling) {
        return of(
                volume,
                filling,
                new Step("volume", "V", "given", String.format(Locale.ROOT, "%.4f L", volume.litres()), "given"));
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
        Volume volume = tube.volume(length);
        return of(
                volume,
                filling,
                new Step(
                        "volume of the tube",
                        "V = pi d^2 / 4 L",
                        String.format(
                                Locale.ROOT,
                                "pi x (%.3f mm)^2 / 4 x %.3f m",
                                tube.insideDiameter().millimetres(),
                                length.metres()),
                        String.format(Locale.ROOT, "%.4f L", volume.litres()),
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
                                "mass in the line",
                                "m = rho V",
                                String.format(
                                        Locale.ROOT,
                                        "%.3f kg/m3 x %.4f L",
                                        filling.density().kilogramsPerCubicMetre(),
                                        volume.litres()),
                                String.format(Locale.ROOT, "%.4f kg", kilograms),
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
                "additional charge",
                "m = m_liquid line + m_suction line over the extra length",
                String.format(
                        Locale.ROOT,
                        "%.4f kg + %.4f kg over %.2f m",
                        inLiquid.mass().kilograms(),
                        inVapour.mass().kilograms(),
                        longer),
                String.format(Locale.ROOT, "%.4f kg", sum.kilograms()),
                "arithmetic"));
        return new LineCharge(
                sum,
                List.of(new Caution(
                        "the maker's figure for each length of line goes first; add by weight, then judge by subcooling or superheat, "
                                + "and mind the longest line and the charge limit that the maker allows",
                        "common practice, no source")),
                steps);
    }
}

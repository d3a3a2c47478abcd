package org.satline.equilibrium;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Parts;
import org.satline.refrigerant.Composition;
import org.satline.refrigerant.Refrigerant;

/**
 * What withdrawing vapour or liquid does to the blend that stays behind in a closed vessel: a cylinder that is charged from the wrong way
 * up, or a system that leaks. Temperature is held, mass is taken out in small steps, and what remains settles after each. Immutable and
 * thread-safe.
 *
 * <p>Method: differential (open) evaporation, integrated by the explicit midpoint rule in the share of the mass withdrawn; {@link #track}
 * tells its own error, the largest change of a mass fraction when the number of steps is doubled.
 */
public final class Withdrawal {
    /** Which phase is taken out. */
    public enum Drawn {
        /** Vapour from the top, or a leak above the liquid. */
        VAPOUR,
        /** Liquid from a dip tube, or a leak below the level. */
        LIQUID
    }

    private static final int STEPS = 16;

    private final FluidModel model;
    private final double temperature;
    private final double density;

    private Withdrawal(FluidModel model, double temperature, double density) {
        this.model = model;
        this.temperature = temperature;
        this.density = density;
    }

    /**
     * Describes the vessel before anything is taken out.
     *
     * @param model the blend
     * @param temperatureK temperature that is held, K
     * @param density mass of contents over volume of the vessel, kg/m3
     * @return the vessel
     * @throws OutOfValidityException if liquid and vapour are not both present
     */
    public static Withdrawal from(FluidModel model, double temperatureK, double density) {
        Parts.required("model", model);
        Parts.numbers("temperatureK density", temperatureK, density);
        double vapour = model.dewAtTemperature(temperatureK).saturated().density();
        double liquid = model.bubbleAtTemperature(temperatureK).saturated().density();
        if (!(density > vapour && density < liquid)) {
            throw OutOfValidityException.of(
                    "density",
                    density,
                    "kg/m3",
                    vapour,
                    liquid,
                    "liquid and vapour together at " + temperatureK + " K",
                    "nothing shifts where only one phase is present");
        }
        return new Withdrawal(model, temperatureK, density);
    }

    /**
     * What is left after a share of the mass is gone.
     *
     * @param withdrawn share of the first mass that was taken out, in [0, 1)
     * @param remaining the blend that stays behind
     * @param bubblePressurePa its bubble pressure at the temperature held, Pa
     * @param dewPressurePa its dew pressure there, Pa
     * @param massFractionError stated error of its mass fractions
     */
    public record Remainder(
            double withdrawn,
            Refrigerant remaining,
            double bubblePressurePa,
            double dewPressurePa,
            double massFractionError) {
        /** {@inheritDoc} */
        public Remainder {
            Parts.required("remaining", remaining);
            Parts.numbers("withdrawn bubblePressurePa dewPressurePa", withdrawn, bubblePressurePa, dewPressurePa);
            Parts.numbers("massFractionError", massFractionError);
        }
    }

    /**
     * Follows the remainder.
     *
     * @param drawn which phase is taken out
     * @param shares shares of the first mass, rising, each in [0, 0.95]; the liquid must not run out before
     * @return the remainder at each share
     * @throws OutOfValidityException if a share is outside, or one phase or component has run out before it
     */
    public List<Remainder> track(Drawn drawn, double... shares) {
        Objects.requireNonNull(drawn, "drawn");
        List<Remainder> track = new ArrayList<>();
        for (double share : shares) {
            if (!(share >= 0 && share <= 0.95)) {
                throw OutOfValidityException.of("share withdrawn", share, "", 0, 0.95, "this method", "take out less");
            }
            double[] coarse = integrate(drawn, share, STEPS);
            double[] fine = integrate(drawn, share, 2 * STEPS);
            double error = 0;
            for (int i = 0; i < fine.length; i++) {
                error = Math.max(error, Math.abs(fine[i] - coarse[i]));
            }
            FluidModel left = model(fine);
            track.add(new Remainder(
                    share,
                    left.refrigerant(),
                    left.bubbleAtTemperature(temperature).pressurePa(),
                    left.dewAtTemperature(temperature).pressurePa(),
                    error));
        }
        return List.copyOf(track);
    }

    /** Mass fractions of the remainder. */
    private double[] integrate(Drawn drawn, double share, int steps) {
        double[] w = massFractions(model.refrigerant().composition());
        double step = share / steps;
        double gone = 0;
        for (int k = 0; k < steps && share > 0; k++) {
            double[] middle = after(w, drawn(w, drawn, gone), step / 2, 1 - gone);
            w = after(w, drawn(middle, drawn, gone + step / 2), step, 1 - gone);
            gone += step;
        }
        return w;
    }

    /** Fractions once a mass of the drawn composition has left a remainder of given mass. */
    private static double[] after(double[] w, double[] out, double taken, double mass) {
        double[] left = new double[w.length];
        for (int i = 0; i < w.length; i++) {
            left[i] = (w[i] * mass - out[i] * taken) / (mass - taken);
        }
        return left;
    }

    /** Mass fractions of the phase that leaves. */
    private double[] drawn(double[] w, Drawn drawn, double gone) {
        FluidModel now = model(w);
        PhaseSplit split = now.states().atTemperatureAndDensity(temperature, density * (1 - gone));
        if (split.phases() != PhaseSplit.Phases.LIQUID_AND_VAPOUR) {
            throw OutOfValidityException.of(
                    "share withdrawn",
                    gone,
                    "",
                    0,
                    gone,
                    "liquid and vapour together",
                    "one phase has run out; take out less");
        }
        double[] x = drawn == Drawn.VAPOUR ? split.vapourMoleFractions() : split.liquidMoleFractions();
        double sum = 0;
        List<Composition.Component> components =
                model.refrigerant().composition().components();
        for (int i = 0; i < x.length; i++) {
            x[i] *= components.get(i).substance().molarMassKilogramsPerMole();
            sum += x[i];
        }
        for (int i = 0; i < x.length; i++) {
            x[i] /= sum;
        }
        return x;
    }

    private FluidModel model(double[] w) {
        Map<Refrigerant, Double> fractions = new LinkedHashMap<>();
        List<Composition.Component> components =
                model.refrigerant().composition().components();
        double sum = 0;
        for (double each : w) {
            sum += each;
        }
        for (int i = 0; i < w.length; i++) {
            double left = w[i] / sum;
            if (!(left >= Composition.LEAST)) {
                String gone = components.get(i).substance().designation();
                throw OutOfValidityException.of(
                        "mass fraction of " + gone, left, "", Composition.LEAST, 1, "this method", "take out less");
            }
            fractions.put(components.get(i).substance(), left);
        }
        String name =
                String.format(Locale.ROOT, "%s, shifted", model.refrigerant().designation());
        return FluidModel.of(Refrigerant.blend(name, Composition.ofMassFractions(fractions)), model.interactionModel());
    }

    private static double[] massFractions(Composition composition) {
        return composition.components().stream()
                .mapToDouble(Composition.Component::massFraction)
                .toArray();
    }
}

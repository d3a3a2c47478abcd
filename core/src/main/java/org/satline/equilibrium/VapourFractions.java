package org.satline.equilibrium;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.satline.equilibrium.IncipientPhase.Specified;
import org.satline.quantity.OutOfValidityException;

/**
 * Two-phase states at a vapour mass fraction on an isotherm or isobar, and why there is none. Beside the ends of the region not every
 * fraction is reached: above the critical temperature of a blend liquid appears and goes again. Immutable and thread-safe.
 */
final class VapourFractions {
    private final FluidModel model;
    private final ManyStates many;

    VapourFractions(FluidModel model, ManyStates many) {
        this.model = model;
        this.many = many;
    }

    /** One or more. */
    List<Solution> at(Specified fixed, double value, double fraction) {
        if (!(fraction >= 0 && fraction <= 1)) {
            throw OutOfValidityException.of(
                    "vapour fraction", fraction, "", 0, 1, "its definition", "give a mass fraction");
        }
        List<Solution> found = many.atVapourFraction(fixed, value, fraction);
        if (!found.isEmpty()) {
            return found;
        }
        boolean isotherm = fixed == Specified.TEMPERATURE;
        double coldest = model.minTemperatureK();
        double low = isotherm ? coldest : model.dewAtTemperature(coldest).pressurePa();
        double high = isotherm
                ? model.lines().warmestPoint().temperatureK()
                : model.lines().highestPressure().pressurePa();
        if (!(value >= low && value <= high)) {
            throw OutOfValidityException.of(
                    isotherm ? "temperature" : "pressure",
                    value,
                    isotherm ? "K" : "Pa",
                    low,
                    high,
                    "the two-phase region of " + name(),
                    "ask for a single-phase state outside it");
        }
        Optional<Range> reached = many.vapourFractions(fixed, value);
        throw reached.filter(range -> fraction < range.low() || fraction > range.high())
                .<RuntimeException>map(range -> notReached(isotherm, value, fraction, range))
                .orElseGet(() -> new ConvergenceException(String.format(
                        Locale.ROOT,
                        "state of %s at a vapour fraction and a %s of %s %s: none found; ask for it by temperature and"
                                + " pressure",
                        name(),
                        isotherm ? "temperature" : "pressure",
                        value,
                        isotherm ? "K" : "Pa")));
    }

    private OutOfValidityException notReached(boolean isotherm, double value, double fraction, Range reached) {
        return OutOfValidityException.of(
                "vapour fraction",
                fraction,
                "",
                reached.low(),
                reached.high(),
                String.format(
                        Locale.ROOT, "%s at %.6g %s", name(), isotherm ? value : value / 1000, isotherm ? "K" : "kPa"),
                "give a fraction within it, or another " + (isotherm ? "temperature" : "pressure"));
    }

    private String name() {
        return model.refrigerant().designation();
    }
}

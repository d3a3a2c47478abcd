package org.satline.saturation;

import java.util.List;
import java.util.stream.Stream;
import org.satline.equilibrium.BoundaryPoint;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.Range;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Refrigerant;

/**
 * How well the saturation pressures and temperatures of a refrigerant are known: the published uncertainty of its equations, the standing
 * of each pair of its mixture model, and the tolerances of its composition as formulated, combined after JCGM 100:2008 (first order,
 * uncorrelated). Immutable and thread-safe. Making one costs two prepared models for each component with a tolerance, some tens of
 * milliseconds; keep it.
 *
 * <p>Shares, all as standard uncertainties, relative to the pressure, with liquid mole fractions x and vapour mole fractions y of the
 * equilibrium:
 *
 * <ul>
 *   <li>equation of substance i: stated expanded uncertainty / 2, times y_i at a bubble point and x_i at a dew point (the slopes of
 *   Raoult's law);
 *   <li>pair i, j: figure u of the equimolar mixture, times 4 |y_i x_j + y_j x_i - x_i x_j| at a bubble point and 4 x_i x_j at a dew point
 *   (a regular solution whose excess Gibbs energy is off by {@code 4 u RT x_i x_j}); u is larger where the temperature lies above the
 *   critical temperature of one of the two; where it comes from stands in the contribution;
 *   <li>published point: where the computed bubble or dew point at 101.325 kPa is farther than 0.5 K from the published one, that
 *   difference as pressure counts in full besides the pairs;
 *   <li>composition: each component is moved to both ends of its mass tolerance, the rest in unchanged proportions; the half-width of the
 *   two pressures over the square root of 3 (rectangular distribution). Of n fractions n - 1 are free, hence the common factor sqrt((n -
 *   1)/n).
 * </ul>
 *
 * <p>Not in it: contamination, air, and what leaks have taken from a blend, see {@link org.satline.equilibrium.Withdrawal}. Close to the
 * critical point the first-order shares are too small.
 */
public final class SaturationUncertainty {
    private static final double NORMAL_PRESSURE_PA =
            Atmosphere.standard().pressure().pascals();
    private static final double NOTABLE_K = 0.5;

    private final FluidModel model;
    private final ToleranceVariants tolerances;
    private final double bubbleMiss;
    private final double dewMiss;

    private SaturationUncertainty(FluidModel model) {
        this.model = model;
        this.tolerances = new ToleranceVariants(model);
        double bubble = bubbleDifferenceFromPublished();
        double dew = dewDifferenceFromPublished();
        boolean notable = Math.max(Math.abs(bubble), Math.abs(dew)) > NOTABLE_K;
        this.bubbleMiss = notable ? miss(bubble, true) : 0;
        // of azeotropes one boiling point is printed: it stands for both lines
        boolean one = model.refrigerant().published().dewPoint().isEmpty();
        this.dewMiss = one ? bubbleMiss : notable ? miss(dew, false) : 0;
    }

    /**
     * Prepares the uncertainty of a refrigerant under the default mixture model.
     *
     * @param refrigerant substance or blend
     * @return its uncertainty
     * @throws org.satline.equation.MissingEquationException if a component has no equation
     */
    public static SaturationUncertainty of(Refrigerant refrigerant) {
        return of(FluidModel.of(refrigerant));
    }

    /**
     * Prepares the uncertainty of a prepared model.
     *
     * @param model the model
     * @return its uncertainty
     */
    public static SaturationUncertainty of(FluidModel model) {
        Refrigerant listed = model.refrigerant().asListed();
        // what is published of a composition holds whatever it is called
        return new SaturationUncertainty(
                listed.equals(model.refrigerant()) ? model : FluidModel.of(listed, model.interactionModel()));
    }

    /**
     * Returns the refrigerant.
     *
     * @return the refrigerant
     */
    public Refrigerant refrigerant() {
        return model.refrigerant();
    }

    /**
     * Returns the temperatures at which all four questions are answered: those of both lines, for the blend at every end of its tolerances.
     *
     * @return range, K
     */
    public Range temperatureRange() {
        List<FluidModel> all = models().toList();
        return new Range(
                all.stream().mapToDouble(FluidModel::minTemperatureK).max().orElseThrow(),
                all.stream().mapToDouble(FluidModel::maxTemperatureK).min().orElseThrow());
    }

    private Stream<FluidModel> models() {
        return Stream.concat(
                Stream.of(model), tolerances.variants().stream().flatMap(v -> Stream.of(v.fewer(), v.more())));
    }

    /**
     * Returns the bubble-point pressure with its uncertainty.
     *
     * @param temperature temperature within {@link #temperatureRange()}
     * @return the budget, Pa
     * @throws OutOfValidityException outside that range
     */
    public SaturationBudget bubblePressure(Temperature temperature) {
        return atTemperature(SaturationProperty.BUBBLE_PRESSURE, temperature.kelvins());
    }

    /**
     * Returns the dew-point pressure with its uncertainty.
     *
     * @param temperature temperature within {@link #temperatureRange()}
     * @return the budget, Pa
     * @throws OutOfValidityException outside that range
     */
    public SaturationBudget dewPressure(Temperature temperature) {
        return atTemperature(SaturationProperty.DEW_PRESSURE, temperature.kelvins());
    }

    /**
     * Returns the bubble-point temperature with its uncertainty: that of the pressure over the slope of the bubble line.
     *
     * @param pressure absolute pressure whose bubble point lies within {@link #temperatureRange()}
     * @return the budget, K
     * @throws OutOfValidityException outside that range
     */
    public SaturationBudget bubbleTemperature(Pressure pressure) {
        return atTemperature(
                SaturationProperty.BUBBLE_TEMPERATURE,
                model.bubbleAtPressure(pressure.pascals()).temperatureK());
    }

    /**
     * Returns the dew-point temperature with its uncertainty: that of the pressure over the slope of the dew line.
     *
     * @param pressure absolute pressure whose dew point lies within {@link #temperatureRange()}
     * @return the budget, K
     * @throws OutOfValidityException outside that range
     */
    public SaturationBudget dewTemperature(Pressure pressure) {
        return atTemperature(
                SaturationProperty.DEW_TEMPERATURE,
                model.dewAtPressure(pressure.pascals()).temperatureK());
    }

    private SaturationBudget atTemperature(SaturationProperty property, double temperatureK) {
        Range range = temperatureRange();
        if (!(temperatureK >= range.low() && temperatureK <= range.high())) {
            throw OutOfValidityException.of(
                    "temperature",
                    temperatureK,
                    "K",
                    range.low(),
                    range.high(),
                    "the saturation lines of " + model.refrigerant().designation() + " at the ends of its tolerances",
                    "ask farther from the end of the lines");
        }
        boolean bubble = property.onBubbleLine();
        BoundaryPoint point = bubble ? model.bubbleAtTemperature(temperatureK) : model.dewAtTemperature(temperatureK);
        return new BudgetBuilder(model, tolerances, property, point, bubble ? bubbleMiss : dewMiss, range).budget();
    }

    /** Computed less published bubble point at 101.325 kPa, K; 0 where there is none to compare. */
    private double bubbleDifferenceFromPublished() {
        Range range = model.bubblePressureRange();
        return model.refrigerant()
                .published()
                .bubblePoint()
                .filter(t -> NORMAL_PRESSURE_PA >= range.low() && NORMAL_PRESSURE_PA <= range.high())
                .map(t -> model.bubbleAtPressure(NORMAL_PRESSURE_PA).temperatureK() - t.kelvins())
                .orElse(0.0);
    }

    /** Computed less published dew point at 101.325 kPa, K; 0 where there is none to compare. */
    private double dewDifferenceFromPublished() {
        Range range = model.dewPressureRange();
        return model.refrigerant()
                .published()
                .dewPoint()
                .filter(t -> NORMAL_PRESSURE_PA >= range.low() && NORMAL_PRESSURE_PA <= range.high())
                .map(t -> model.dewAtPressure(NORMAL_PRESSURE_PA).temperatureK() - t.kelvins())
                .orElse(0.0);
    }

    /** A difference of boiling points as a relative difference of pressures. */
    private double miss(double differenceK, boolean bubble) {
        if (differenceK == 0) {
            return 0;
        }
        double at = bubble
                ? model.bubbleAtPressure(NORMAL_PRESSURE_PA).temperatureK()
                : model.dewAtPressure(NORMAL_PRESSURE_PA).temperatureK();
        Range range = new Range(model.minTemperatureK(), model.maxTemperatureK());
        return Math.abs(differenceK) * BudgetBuilder.logSlope(model, bubble, at, range);
    }
}

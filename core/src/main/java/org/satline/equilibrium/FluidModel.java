package org.satline.equilibrium;

import java.util.Locale;
import java.util.OptionalDouble;
import org.satline.equation.EquationLibrary;
import org.satline.equation.FixedComposition;
import org.satline.equation.InteractionModel;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Parts;
import org.satline.quantity.SpecificEnthalpy;
import org.satline.quantity.SpecificEntropy;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Refrigerant;

/**
 * A refrigerant prepared for calculation: its equation, its traced bubble and dew lines and its reference state. Making one costs some milliseconds;
 * it is then immutable, thread-safe and meant to be kept. All doubles are SI units.
 */
public final class FluidModel {
    private final Refrigerant refrigerant;
    private final InteractionModel interactionModel;
    private final FixedComposition composition;
    private final PhaseBoundary bubble;
    private final PhaseBoundary dew;
    private final ReferenceState referenceState;
    private final double enthalpyOffset;
    private final double entropyOffset;
    private final SinglePhase singlePhase;

    private FluidModel(Base base, ReferenceState reference, double enthalpyOffset, double entropyOffset) {
        this.refrigerant = base.refrigerant;
        this.interactionModel = base.interactionModel;
        this.composition = base.composition;
        this.bubble = base.bubble;
        this.dew = base.dew;
        this.singlePhase = base.singlePhase;
        this.referenceState = reference;
        this.enthalpyOffset = enthalpyOffset;
        this.entropyOffset = entropyOffset;
    }

    /** What does not depend on the reference state. */
    private record Base(
            Refrigerant refrigerant,
            InteractionModel interactionModel,
            FixedComposition composition,
            PhaseBoundary bubble,
            PhaseBoundary dew,
            SinglePhase singlePhase) {}

    /**
     * Prepares a refrigerant with the default pair parameters and the IIR reference state, or the normal boiling point where that does not
     * exist, or the coldest saturated liquid where neither does.
     *
     * @param refrigerant substance or blend
     * @return the prepared model
     * @throws org.satline.equation.MissingEquationException if a component has no equation
     * @throws TwoLiquidsException if water, ammonia or nitrogen meet halocarbons or hydrocarbons, or if the liquid splits in two at every temperature
     */
    public static FluidModel of(Refrigerant refrigerant) {
        return of(refrigerant, InteractionModel.ADJUSTED_OVER_PUBLISHED);
    }

    /**
     * Prepares a refrigerant with the pair parameters of choice.
     *
     * @param refrigerant substance or blend
     * @param model which pair parameters to use
     * @return the prepared model, reference state as in {@link #of(Refrigerant)}
     */
    public static FluidModel of(Refrigerant refrigerant, InteractionModel model) {
        Parts.required("refrigerant model", refrigerant, model);
        FixedComposition composition = EquationLibrary.standard().of(refrigerant, model);
        Miscibility.check(refrigerant);
        PhaseBoundary bubble = PhaseBoundary.of(composition, true);
        PhaseBoundary dew = composition.mixture().size() == 1 ? bubble : PhaseBoundary.of(composition, false);
        SinglePhase single = new SinglePhase(refrigerant.designation(), composition, bubble, dew);
        Base base = new Base(refrigerant, model, composition, bubble, dew, single);
        FluidModel raw = new FluidModel(base, ReferenceState.NORMAL_BOILING_POINT, 0, 0);
        return raw.with(raw.defaultReference());
    }

    /** IIR where it exists, else the normal boiling point, else the coldest saturated liquid. */
    private ReferenceState defaultReference() {
        if (has(ReferenceState.IIR)) {
            return ReferenceState.IIR;
        }
        return has(ReferenceState.NORMAL_BOILING_POINT)
                ? ReferenceState.NORMAL_BOILING_POINT
                : ReferenceState.ofSaturatedLiquid(
                        Temperature.ofKelvins(bubble.minTemperature()),
                        SpecificEnthalpy.ofJoulesPerKilogram(0),
                        SpecificEntropy.ofJoulesPerKilogramKelvin(0));
    }

    /**
     * Tells whether a reference state exists for this refrigerant.
     *
     * @param reference the reference state
     * @return true if its saturated liquid lies on the bubble line
     */
    public boolean has(ReferenceState reference) {
        return reference
                .temperature()
                .map(t -> t.kelvins() >= bubble.minTemperature() && t.kelvins() <= bubble.maxTemperature())
                .orElse(ReferenceState.NORMAL_PRESSURE_PA >= bubble.minPressure()
                        && ReferenceState.NORMAL_PRESSURE_PA <= bubble.maxPressure());
    }

    /**
     * Returns the same model counting enthalpy and entropy from another reference state.
     *
     * @param reference the reference state
     * @return the model; equations and lines are shared
     * @throws OutOfValidityException if the reference state does not exist for this refrigerant
     */
    public FluidModel with(ReferenceState reference) {
        if (!has(reference)) {
            throw missing(reference);
        }
        IncipientPhase point = reference
                .temperature()
                .map(t -> bubble.atTemperature(t.kelvins()))
                .orElseGet(() -> bubble.atPressure(ReferenceState.NORMAL_PRESSURE_PA));
        FluidState raw = new FluidState(composition, point.temperature(), point.feedDensity(), 0, 0);
        Base base = new Base(refrigerant, interactionModel, composition, bubble, dew, singlePhase);
        return new FluidModel(
                base,
                reference,
                reference.enthalpy() - raw.specificEnthalpy(),
                reference.entropy() - raw.specificEntropy());
    }

    private OutOfValidityException missing(ReferenceState reference) {
        String advice = "choose another reference state for " + refrigerant.designation();
        return reference.temperature().isPresent()
                ? OutOfValidityException.of(
                        "reference temperature",
                        reference.temperature().get().kelvins(),
                        "K",
                        bubble.minTemperature(),
                        bubble.maxTemperature(),
                        "the bubble line",
                        advice)
                : OutOfValidityException.of(
                        "reference pressure",
                        ReferenceState.NORMAL_PRESSURE_PA,
                        "Pa",
                        bubble.minPressure(),
                        bubble.maxPressure(),
                        "the bubble line",
                        advice);
    }

    /**
     * Returns the refrigerant.
     *
     * @return the refrigerant
     */
    public Refrigerant refrigerant() {
        return refrigerant;
    }

    /**
     * Returns the equation at the refrigerant's composition, with its pairs and sources.
     *
     * @return the equation
     */
    public FixedComposition equation() {
        return composition;
    }

    /**
     * Returns which pair parameters are in use.
     *
     * @return the interaction model
     */
    public InteractionModel interactionModel() {
        return interactionModel;
    }

    /**
     * Returns where enthalpy and entropy count from.
     *
     * @return the reference state
     */
    public ReferenceState referenceState() {
        return referenceState;
    }

    /**
     * Returns the coldest temperature of the saturation lines.
     *
     * @return K
     */
    public double minTemperatureK() {
        return Math.max(bubble.minTemperature(), dew.minTemperature());
    }

    /**
     * Returns the warmest temperature at which both lines answer, a hair below where the first of them ends.
     *
     * @return K
     */
    public double maxTemperatureK() {
        return Math.min(bubble.maxTemperature(), dew.maxTemperature());
    }

    /**
     * Returns the temperature below which the model lets the liquid split in two. No answer is given there: a bubble or dew point of one liquid would not
     * be the stable state.
     *
     * @return K; empty where the lines begin with the components' equations
     */
    public OptionalDouble liquidSplitTemperatureK() {
        return bubble.beginsAtSplit() || dew.beginsAtSplit()
                ? OptionalDouble.of(minTemperatureK())
                : OptionalDouble.empty();
    }

    /**
     * Returns the pressures between which the bubble line answers.
     *
     * @return range, Pa
     */
    public Range bubblePressureRange() {
        return new Range(bubble.minPressure(), bubble.maxPressure());
    }

    /**
     * Returns the pressures between which the dew line answers.
     *
     * @return range, Pa
     */
    public Range dewPressureRange() {
        return new Range(dew.minPressure(), dew.maxPressure());
    }

    /**
     * Returns the temperatures between which the bubble line answers.
     *
     * @return range, K
     */
    public Range bubbleTemperatureRange() {
        return new Range(bubble.minTemperature(), bubble.maxTemperature());
    }

    /**
     * Returns the temperatures between which the dew line answers.
     *
     * @return range, K
     */
    public Range dewTemperatureRange() {
        return new Range(dew.minTemperature(), dew.maxTemperature());
    }

    /**
     * Returns where the bubble line ends.
     *
     * @return its end
     */
    public BoundaryEnd bubbleEnd() {
        return bubble.end();
    }

    /**
     * Returns where the dew line ends.
     *
     * @return its end
     */
    public BoundaryEnd dewEnd() {
        return dew.end();
    }

    /**
     * Returns the end of the two-phase line: the colder end of bubble and dew line. Fractions of a critical temperature of a blend refer to it.
     *
     * @return the end
     */
    public BoundaryEnd twoPhaseEnd() {
        return bubble.end().temperatureK() <= dew.end().temperatureK() ? bubble.end() : dew.end();
    }

    /**
     * Solves the bubble point at a temperature.
     *
     * @param temperatureK T, K, within {@link #bubbleTemperatureRange()}
     * @return the point
     * @throws OutOfValidityException outside that range
     */
    public BoundaryPoint bubbleAtTemperature(double temperatureK) {
        return point(true, bubble.atTemperature(checkTemperature(bubble, "bubble", temperatureK)));
    }

    /**
     * Solves the bubble point at a pressure.
     *
     * @param pressurePa p, Pa, within {@link #bubblePressureRange()}
     * @return the point
     * @throws OutOfValidityException outside that range
     */
    public BoundaryPoint bubbleAtPressure(double pressurePa) {
        return point(true, bubble.atPressure(checkPressure(bubble, "bubble", pressurePa)));
    }

    /**
     * Solves the dew point at a temperature.
     *
     * @param temperatureK T, K, within {@link #dewTemperatureRange()}
     * @return the point
     * @throws OutOfValidityException outside that range
     */
    public BoundaryPoint dewAtTemperature(double temperatureK) {
        return point(false, dew.atTemperature(checkTemperature(dew, "dew", temperatureK)));
    }

    /**
     * Solves the dew point at a pressure.
     *
     * @param pressurePa p, Pa, within {@link #dewPressureRange()}
     * @return the point
     * @throws OutOfValidityException outside that range
     */
    public BoundaryPoint dewAtPressure(double pressurePa) {
        return point(false, dew.atPressure(checkPressure(dew, "dew", pressurePa)));
    }

    /**
     * Finds the stable one-phase state at a temperature and pressure.
     *
     * @param temperatureK T, K
     * @param pressurePa p, Pa
     * @return the state
     * @throws OutOfValidityException outside the equation's range, or where two phases are present
     */
    public FluidState stateAt(double temperatureK, double pressurePa) {
        return state(temperatureK, singlePhase.molarDensity(temperatureK, pressurePa));
    }

    /**
     * Finds the state of a closed vessel: phases, pressure and liquid level at a temperature and an overall density.
     *
     * @param temperatureK T, K
     * @param density mass of contents over volume, kg/m3
     * @return the state
     * @throws OutOfValidityException outside the equation's range, or in the narrow region beside the critical point where the lines end
     */
    public PhaseSplit splitAtDensity(double temperatureK, double density) {
        return finder().atDensity(temperatureK, density);
    }

    /**
     * Finds the two-phase state at a pressure and vapour fraction.
     *
     * @param pressurePa p, Pa, within both pressure ranges
     * @param vapourFraction vapour mass fraction in [0, 1]
     * @return the state
     * @throws OutOfValidityException outside those ranges
     */
    public PhaseSplit splitAtVapourFraction(double pressurePa, double vapourFraction) {
        return finder().atVapourFraction(pressurePa, vapourFraction);
    }

    /**
     * Finds the state at a pressure and specific enthalpy, one phase or two: a throttled liquid, for instance.
     *
     * @param pressurePa p, Pa
     * @param specificEnthalpy h, J/kg, from this model's reference state
     * @return the state
     * @throws OutOfValidityException outside the equation's range
     */
    public PhaseSplit splitAtEnthalpy(double pressurePa, double specificEnthalpy) {
        return finder().atEnthalpy(pressurePa, specificEnthalpy);
    }

    /**
     * Finds the state at a pressure and specific entropy, one phase or two.
     *
     * @param pressurePa p, Pa
     * @param specificEntropy s, J/(kg K), from this model's reference state
     * @return the state
     * @throws OutOfValidityException outside the equation's range
     */
    public PhaseSplit splitAtEntropy(double pressurePa, double specificEntropy) {
        return finder().atEntropy(pressurePa, specificEntropy);
    }

    private StateFinder finder() {
        return new StateFinder(this, singlePhase);
    }

    FluidState state(double temperatureK, double molarDensity) {
        return state(composition, temperatureK, molarDensity);
    }

    /** State of a phase whose composition may differ from that of the whole; counted from the same reference. */
    FluidState state(FixedComposition phase, double temperatureK, double molarDensity) {
        return new FluidState(phase, temperatureK, molarDensity, enthalpyOffset, entropyOffset);
    }

    private BoundaryPoint point(boolean bubbleSide, IncipientPhase solved) {
        boolean pure = bubble == dew;
        boolean swap = pure && !bubbleSide;
        double saturated = swap ? solved.incipientDensity() : solved.feedDensity();
        double incipient = swap ? solved.feedDensity() : solved.incipientDensity();
        return new BoundaryPoint(
                solved.temperature(),
                solved.pressure(),
                state(solved.temperature(), saturated),
                incipient,
                solved.incipientState.moleFractions,
                solved.fugacityResidual(),
                solved.pressureResidual());
    }

    private double checkTemperature(PhaseBoundary line, String name, double temperatureK) {
        if (!(temperatureK >= line.minTemperature() && temperatureK <= line.maxTemperature())) {
            throw OutOfValidityException.of(
                    "temperature",
                    temperatureK,
                    "K",
                    line.minTemperature(),
                    line.maxTemperature(),
                    whose(line, name),
                    "ask for a single-phase state outside it");
        }
        return temperatureK;
    }

    private double checkPressure(PhaseBoundary line, String name, double pressurePa) {
        if (!(pressurePa >= line.minPressure() && pressurePa <= line.maxPressure())) {
            throw OutOfValidityException.of(
                    "pressure",
                    pressurePa,
                    "Pa",
                    line.minPressure(),
                    line.maxPressure(),
                    whose(line, name),
                    "ask for a single-phase state outside it");
        }
        return pressurePa;
    }

    private String whose(PhaseBoundary line, String name) {
        String lineName = bubble == dew ? "saturation" : name;
        return String.format(
                Locale.ROOT,
                "the %s line of %s, which ends at its %s, %.4f K and %.0f Pa%s",
                lineName,
                refrigerant.designation(),
                line.end().kind().words(),
                line.end().temperatureK(),
                line.end().pressurePa(),
                line.beginsAtSplit()
                        ? String.format(
                                Locale.ROOT,
                                ", and begins at %.2f K: colder its liquid would split in two",
                                line.minTemperature())
                        : "");
    }
}

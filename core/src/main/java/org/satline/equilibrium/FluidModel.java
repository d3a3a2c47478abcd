package org.satline.equilibrium;

import java.util.OptionalDouble;
import org.satline.equation.EquationLibrary;
import org.satline.equation.FixedComposition;
import org.satline.equation.InteractionModel;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Parts;
import org.satline.refrigerant.Refrigerant;

/**
 * A refrigerant prepared for calculation: its equation, its traced bubble and dew lines and its reference state. Making one costs some
 * milliseconds; it is then immutable, thread-safe and meant to be kept. All doubles are SI units.
 */
public final class FluidModel {
    private final Refrigerant refrigerant;
    private final InteractionModel interactionModel;
    private final FixedComposition composition;
    private final Envelope envelope;
    private final PhaseBoundary bubble;
    private final PhaseBoundary dew;
    private final SinglePhase singlePhase;
    private final ReferenceShift shift;
    private final StateFinder states;
    private final PhaseLines lines;

    private FluidModel(
            Refrigerant refrigerant,
            InteractionModel interactionModel,
            Envelope envelope,
            SinglePhase singlePhase,
            ReferenceShift shift) {
        this.refrigerant = refrigerant;
        this.interactionModel = interactionModel;
        this.composition = envelope.composition;
        this.envelope = envelope;
        this.bubble = envelope.bubble;
        this.dew = envelope.dew;
        this.singlePhase = singlePhase;
        this.shift = shift;
        this.lines = new PhaseLines(this, envelope);
        this.states = new StateFinder(this, envelope, singlePhase);
    }

    /**
     * Prepares a refrigerant with the default pair parameters and the IIR reference state, or the normal boiling point where that does not
     * exist, or the coldest saturated liquid where neither does.
     *
     * @param refrigerant substance or blend
     * @return the prepared model
     * @throws org.satline.equation.MissingEquationException if a component has no equation
     * @throws TwoLiquidsException if water or ammonia meet a halocarbon or hydrocarbon without parameters for the pair, or if the liquid
     *     splits in two at every temperature of the lines
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
        return untried(refrigerant, EquationLibrary.standard(), model);
    }

    /**
     * Prepares a refrigerant with equations of a library, such as one that holds equations or pair parameters of the caller's own. Own
     * equations are tried first.
     *
     * @param refrigerant substance or blend
     * @param library where the equations are
     * @return the prepared model with the default pair parameters, reference state as in {@link #of(Refrigerant)}
     * @throws FailedTrialException if an equation of the caller's own does not stand its {@link EquationTrial}
     */
    public static FluidModel of(Refrigerant refrigerant, EquationLibrary library) {
        Parts.required("refrigerant library", refrigerant, library);
        EquationTrial.demand(refrigerant, library);
        return untried(refrigerant, library, InteractionModel.ADJUSTED_OVER_PUBLISHED);
    }

    static FluidModel untried(Refrigerant refrigerant, EquationLibrary library, InteractionModel model) {
        Parts.required("refrigerant model", refrigerant, model);
        FixedComposition composition = library.of(refrigerant, model);
        Miscibility.check(composition.mixture());
        Envelope envelope = Envelope.of(composition);
        return new FluidModel(
                refrigerant,
                model,
                envelope,
                new SinglePhase(refrigerant.designation(), envelope),
                ReferenceShift.of(refrigerant.designation(), envelope, ReferenceShift.usual(envelope)));
    }

    /**
     * Tells whether a reference state exists for this refrigerant.
     *
     * @param reference the reference state
     * @return true if its saturated liquid lies on the bubble line
     */
    public boolean has(ReferenceState reference) {
        return ReferenceShift.exists(envelope, reference);
    }

    /**
     * Returns the same model counting enthalpy and entropy from another reference state.
     *
     * @param reference the reference state
     * @return the model; equations and lines are shared
     * @throws OutOfValidityException if the reference state does not exist for this refrigerant
     */
    public FluidModel with(ReferenceState reference) {
        return new FluidModel(
                refrigerant,
                interactionModel,
                envelope,
                singlePhase,
                ReferenceShift.of(refrigerant.designation(), envelope, reference));
    }

    /** {@return the refrigerant} */
    public Refrigerant refrigerant() {
        return refrigerant;
    }

    /** {@return the equation at the refrigerant's composition, with its pairs and sources} */
    public FixedComposition equation() {
        return composition;
    }

    /** {@return which pair parameters are in use} */
    public InteractionModel interactionModel() {
        return interactionModel;
    }

    /** {@return where enthalpy and entropy count from} */
    public ReferenceState referenceState() {
        return shift.reference();
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
     * Returns the temperature below which the model lets the liquid split in two. No answer is given there: a bubble or dew point of one
     * liquid would not be the stable state.
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

    /** {@return where the bubble line ends} */
    public BoundaryEnd bubbleEnd() {
        return bubble.end();
    }

    /** {@return where the dew line ends} */
    public BoundaryEnd dewEnd() {
        return dew.end();
    }

    /**
     * Returns the end of the two-phase line: the colder end of bubble and dew line. Fractions of a critical temperature of a blend refer to
     * it.
     *
     * @return the end
     */
    public BoundaryEnd twoPhaseEnd() {
        return bubble.end().temperatureK() <= dew.end().temperatureK() ? bubble.end() : dew.end();
    }

    /** {@return the phase boundary as a whole: critical point, warmest point, highest pressure, slopes, latent heat} */
    public PhaseLines lines() {
        return lines;
    }

    /**
     * Solves the bubble point at a temperature.
     *
     * @param temperatureK T, K, within {@link #bubbleTemperatureRange()}
     * @return the point
     * @throws OutOfValidityException outside that range
     */
    public BoundaryPoint bubbleAtTemperature(double temperatureK) {
        return point(true, bubble.atTemperature(lines.checkTemperature(bubble, temperatureK)));
    }

    /**
     * Solves the bubble point at a pressure.
     *
     * @param pressurePa p, Pa, within {@link #bubblePressureRange()}
     * @return the point
     * @throws OutOfValidityException outside that range
     */
    public BoundaryPoint bubbleAtPressure(double pressurePa) {
        return point(true, bubble.atPressure(lines.checkPressure(bubble, pressurePa)));
    }

    /**
     * Solves the dew point at a temperature.
     *
     * @param temperatureK T, K, within {@link #dewTemperatureRange()}
     * @return the point
     * @throws OutOfValidityException outside that range
     */
    public BoundaryPoint dewAtTemperature(double temperatureK) {
        return point(false, dew.atTemperature(lines.checkTemperature(dew, temperatureK)));
    }

    /**
     * Solves the dew point at a pressure.
     *
     * @param pressurePa p, Pa, within {@link #dewPressureRange()}
     * @return the point
     * @throws OutOfValidityException outside that range
     */
    public BoundaryPoint dewAtPressure(double pressurePa) {
        return point(false, dew.atPressure(lines.checkPressure(dew, pressurePa)));
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
        PhaseSplit found = states.atTemperatureAndPressure(temperatureK, pressurePa);
        if (found.phases() == PhaseSplit.Phases.LIQUID_AND_VAPOUR) {
            throw new TwoPhaseStateException(
                    refrigerant.designation(),
                    temperatureK,
                    pressurePa,
                    pressureOf(dew, temperatureK),
                    pressureOf(bubble, temperatureK));
        }
        return found.vapour().or(found::liquid).orElseThrow();
    }

    /** Pressure of a line at a temperature, or where it ends. */
    private static double pressureOf(PhaseBoundary line, double temperature) {
        return temperature >= line.minTemperature() && temperature <= line.maxTemperature()
                ? line.atTemperature(temperature).pressure()
                : line.end().pressurePa();
    }

    /** {@return what finds the state at any of the usual pairs of quantities} */
    public StateFinder states() {
        return states;
    }

    ReferenceShift shift() {
        return shift;
    }

    /** State of a phase whose composition may differ from that of the whole; counted from the same reference. */
    FluidState state(FixedComposition phase, double temperatureK, double molarDensity, double knownPressure) {
        return new FluidState(phase, temperatureK, molarDensity, knownPressure, shift.enthalpy(), shift.entropy());
    }

    private BoundaryPoint point(boolean bubbleSide, IncipientPhase solved) {
        boolean pure = bubble == dew;
        boolean swap = pure && !bubbleSide;
        double saturated = swap ? solved.incipientDensity() : solved.feedDensity();
        double incipient = swap ? solved.feedDensity() : solved.incipientDensity();
        return new BoundaryPoint(
                solved.temperature(),
                solved.pressure(),
                state(composition, solved.temperature(), saturated, solved.pressure()),
                incipient,
                solved.incipientState.moleFractions(),
                solved.fugacityResidual(),
                solved.pressureResidual());
    }

    @Override
    public String toString() {
        return "model of " + refrigerant + ", " + interactionModel;
    }
}

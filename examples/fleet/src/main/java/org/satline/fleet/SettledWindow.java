package org.satline.fleet;

/** What one settled window of one unit says. Mutable and public as the serializer of the engine asks for. */
public class SettledWindow {
    /** Number of the unit. */
    public long unit;
    /** Its model. */
    public UnitModel model = UnitModel.HOME;
    /** Begin of the window, s since 1970. */
    public long start;
    /** Readings in it. */
    public int readings;
    /** Mean suction superheat, K. */
    public double superheatK;
    /** Mean subcooling, K. */
    public double subcoolingK;
    /** Mean outdoor air, degC. */
    public double outdoorC;
    /** Error of the charge as the library estimates it, share of the rated charge; negative is short. */
    public double chargeError;
    /**
     * Whether both coils are as near to what the model does as a leak leaves them: only then the charge error is
     * evidence about a leak.
     */
    public boolean alike;
    /** The verdict. */
    public Outcome outcome = Outcome.UNDECIDED;
    /** Probability of the verdict, [0, 1]. */
    public double probability;
    /**
     * What is wrong, where something is: the wrong charge, or the fault that explains coils far from what the model
     * does.
     */
    public Cause cause = Cause.NONE;
    /** Its probability, [0, 1]. */
    public double causeProbability;
}

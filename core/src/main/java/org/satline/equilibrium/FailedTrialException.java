package org.satline.equilibrium;

import java.util.stream.Collectors;
import org.satline.SatlineException;

/** An equation of the caller's own does not compute what it should: a coefficient, a sign or a unit is wrong. */
public final class FailedTrialException extends IllegalArgumentException implements SatlineException {
    private static final long serialVersionUID = 1L;

    private final transient EquationTrial trial;

    FailedTrialException(EquationTrial trial) {
        super("equation of " + trial.designation() + " does not stand its trial: "
                + trial.faults().stream().map(EquationTrial.Part::toString).collect(Collectors.joining("; "))
                + "; hold its files against the paper");
        this.trial = trial;
    }

    /**
     * Returns what was tried and what failed.
     *
     * @return the trial
     */
    public EquationTrial trial() {
        return trial;
    }

    @Override
    public Origin origin() {
        return Origin.DATA;
    }
}

package org.satline.equilibrium;

import org.satline.SatlineException;

/** An iteration ended without an answer. The message names the state that was asked for; no number is returned in its place. */
public final class ConvergenceException extends RuntimeException implements SatlineException {
    private static final long serialVersionUID = 1L;

    /**
     * Creates the exception.
     *
     * @param message what was solved for, at which state
     */
    public ConvergenceException(String message) {
        super(message);
    }

    @Override
    public Origin origin() {
        return Origin.SOLVER;
    }
}

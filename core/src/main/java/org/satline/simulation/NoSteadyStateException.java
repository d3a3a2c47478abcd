package org.satline.simulation;

import org.satline.SatlineException;

/** A simulated system finds no steady state: in life it would trip, starve or flood. The message says what could not be balanced. */
public final class NoSteadyStateException extends RuntimeException implements SatlineException {
    private static final long serialVersionUID = 1L;

    /**
     * Makes the exception.
     *
     * @param message what could not be balanced
     */
    public NoSteadyStateException(String message) {
        super(message);
    }

    @Override
    public Origin origin() {
        return Origin.QUESTION;
    }
}

package org.satline.step;

import java.time.Duration;
import org.satline.quantity.Mass;
import org.satline.quantity.Parts;

/**
 * What bounds a step. Immutable, thread-safe.
 *
 * @param room mass that the recovery cylinder may still take
 * @param available mass that the clean source cylinder can give
 * @param smallest smallest step that scale and hose resolve
 * @param risk accepted probability that a step passes the far edge of the band; in (0, 0.5)
 * @param confidence wanted probability of being on target before stopping; in [0.5, 1)
 * @param settlingTime time to settle after a step; common practice, no source: 15 min
 */
public record StepLimits(
        Mass room, Mass available, Mass smallest, double risk, double confidence, Duration settlingTime) {
    /** {@inheritDoc} */
    public StepLimits {
        Parts.required("room available smallest settlingTime", room, available, smallest, settlingTime);
        if (!(risk > 0 && risk < 0.5 && confidence >= 0.5 && confidence < 1)) {
            throw new IllegalArgumentException(
                    "risk " + risk + " must lie in (0, 0.5) and confidence " + confidence + " in [0.5, 1)");
        }
    }

    /**
     * Returns limits with 5 % risk, 50 % confidence and 15 min to settle. At 50 % a reading inside the band with a signal ends the work, as
     * the published checks of superheat and subcooling take it (simple acceptance in the words of JCGM 106): a few visits in a hundred then
     * end just outside. Ask for more, 0.8 say, where that matters; it costs about one step in twenty.
     *
     * @param room mass that the recovery cylinder may still take
     * @param available mass that the clean source cylinder can give
     * @param smallest smallest step that scale and hose resolve
     * @return the limits
     */
    public static StepLimits usual(Mass room, Mass available, Mass smallest) {
        return new StepLimits(room, available, smallest, 0.05, 0.5, Duration.ofMinutes(15));
    }
}

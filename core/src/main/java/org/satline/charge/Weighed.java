package org.satline.charge;

import java.util.List;
import java.util.Optional;
import org.satline.quantity.Parts;

/**
 * All readings weighed together: what is believed, what each choice is expected to cost, and what reading would change it most. Immutable,
 * thread-safe.
 *
 * @param belief what is believed of the charge and of each fault
 * @param choices each choice, the one that costs least first; none where the charge cannot be judged
 * @param wouldChange path of the field of a visit file that would change the belief most; empty where all that counts was read
 * @param explained whether some hypothesis explains the readings: false where they are unlike any system that the weighing knows
 */
public record Weighed(
        ChargeBelief belief, List<WeighedChoice> choices, Optional<String> wouldChange, boolean explained) {
    /** {@inheritDoc} */
    public Weighed {
        Parts.required("belief wouldChange", belief, wouldChange);
        choices = Parts.list("choices", choices);
    }
}

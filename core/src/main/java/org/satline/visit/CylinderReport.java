package org.satline.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.satline.cylinder.FillAssessment;
import org.satline.cylinder.Refusal;
import org.satline.cylinder.Room;
import org.satline.explanation.Step;
import org.satline.quantity.Parts;

/**
 * What the cylinder may still take. Immutable, thread-safe.
 *
 * @param cylinder the cylinder
 * @param assessment its limits by every rule, and the reasons, if any, why it must not be filled
 * @param doubts reasons not to fill it that weight, pressure, temperature and label give together, the lack of room among them
 * @param room the room by the scale, or that there is none; nothing where it is not weighed or must not be filled for another reason
 */
public record CylinderReport(
        CylinderOnSite cylinder, FillAssessment assessment, List<Refusal> doubts, Optional<Room> room) {
    /** {@inheritDoc} */
    public CylinderReport {
        Parts.required("cylinder assessment", cylinder, assessment);
        doubts = List.copyOf(doubts);
        Objects.requireNonNull(room, "room");
    }

    /**
     * Returns every reason why it must not be filled.
     *
     * @return reasons; empty where there is none
     */
    public List<Refusal> refusals() {
        List<Refusal> all = new ArrayList<>(assessment.refusals());
        all.addAll(doubts);
        return List.copyOf(all);
    }

    /**
     * Tells whether it must not be filled.
     *
     * @return true where there is a reason
     */
    public boolean isRefused() {
        return !refusals().isEmpty();
    }

    /**
     * Returns the derivation of limit and room.
     *
     * @return steps in order
     */
    public List<Step> steps() {
        List<Step> steps = new ArrayList<>(assessment.steps());
        room.ifPresent(found -> steps.addAll(found.steps()));
        return List.copyOf(steps);
    }
}

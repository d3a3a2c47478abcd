package org.satline.visit;

import java.util.ArrayList;
import java.util.List;
import org.satline.safety.Caution;

/** Picks the cautions that matter most for what is done next: ignition first, then poison, then what the task asks for. Stateless. */
final class LeadingCautions {
    private static final int MOST = 2;
    /** One of these, the first that holds; common practice, no source. */
    private static final List<String> IGNITION = List.of("groupUnknown", "igniteEasily", "burns", "burnsSlowly");

    private static final List<String> POISON = List.of("ammonia", "sulfurDioxide", "toxicVapour", "trifluoroethene");
    private static final List<String> SUBSTANCE = List.of("carbonDioxidePressure", "carbonDioxideAir");
    private static final List<String> MOVING_OUT = List.of("trappedLiquid", "weighAlways");
    private static final List<String> MOVING_IN = List.of("liquidSlug", "trappedLiquid");
    private static final List<String> HOOKING_UP = List.of("trappedLiquid", "connectClosed", "goggles");
    private static final List<String> MAKING_SAFE = List.of("trappedLiquid", "goggles", "ventilate");
    private static final List<String> AT_REST = List.of("movingParts", "goggles", "connectClosed");

    private LeadingCautions() {}

    static List<Caution> of(ActionKind action, List<Caution> cautions) {
        List<Caution> found = new ArrayList<>();
        first(IGNITION, cautions, found);
        first(POISON, cautions, found);
        first(SUBSTANCE, cautions, found);
        for (String id : byTask(action)) {
            first(List.of(id), cautions, found);
        }
        cautions.stream().filter(each -> !found.contains(each)).forEach(found::add);
        return found.stream().limit(MOST).toList();
    }

    private static List<String> byTask(ActionKind action) {
        return switch (action) {
            case TAKE_OUT -> MOVING_OUT;
            case PUT_IN -> MOVING_IN;
            case PREPARE -> HOOKING_UP;
            case MAKE_SAFE -> MAKING_SAFE;
            case MEND_FIRST, READ_AGAIN, DONE -> AT_REST;
        };
    }

    private static void first(List<String> ids, List<Caution> cautions, List<Caution> found) {
        for (String id : ids) {
            for (Caution each : cautions) {
                if (each.id().equals(id)) {
                    found.add(each);
                    return;
                }
            }
        }
    }
}

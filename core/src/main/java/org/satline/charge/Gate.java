package org.satline.charge;

import java.util.List;
import java.util.Set;
import org.satline.explanation.Coded;
import org.satline.explanation.CommonCode;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Subject;
import org.satline.quantity.Parts;

/**
 * A condition of judging a charge, and whether it is met. Immutable, thread-safe.
 *
 * @param kind which condition
 * @param state whether it is met
 * @param figures what was found, and the limit
 * @param missing paths of the fields of a visit file that would tell; none unless it was not read
 */
public record Gate(Kind kind, State state, List<Figure> figures, List<String> missing) {
    private static final Set<Kind> SEVERAL_WAYS = Set.of(Kind.SETTLED, Kind.OUTDOOR_AIR, Kind.AIRFLOW);

    /** Conditions, in the order of work. */
    public enum Kind implements Coded {
        /** The readings have settled. */
        SETTLED,
        /** The system has cooled long enough. */
        RUNNING_TIME,
        /** Outdoor air is warm enough for a judgement by temperatures. */
        OUTDOOR_AIR,
        /** The evaporator has its airflow. */
        AIRFLOW,
        /** The refrigerant is the one of the nameplate, without foreign gas. */
        NAMEPLATE,
        /** The suction line carries vapour only. */
        DRY_SUCTION
    }

    /** Whether a condition is met. */
    public enum State implements Coded {
        /** It is met. */
        MET,
        /** It is not met: no charge advice. */
        NOT_MET,
        /** Something was not read. */
        NOT_READ
    }

    /** {@inheritDoc} */
    public Gate {
        Parts.required("kind state", kind, state);
        figures = Parts.list("figures", figures);
        missing = Parts.list("missing", missing);
    }

    static Gate of(Kind kind, boolean met, Figure... figures) {
        return new Gate(kind, met ? State.MET : State.NOT_MET, List.of(figures), List.of());
    }

    static Gate notRead(Kind kind, String... missing) {
        return new Gate(kind, State.NOT_READ, List.of(), List.of(missing));
    }

    /**
     * Tells whether refrigerant may not move before it was read. The standing pressure is good to know and seldom to be had, so that one
     * never blocks.
     *
     * @return true where it was not read and has to be
     */
    public boolean blocksUnread() {
        return state == State.NOT_READ && kind != Kind.NAMEPLATE;
    }

    /**
     * Key of its text for people: a condition that can be checked in several ways has a text for each.
     *
     * @return such as {@code gate.runningTime.met} or, by the first figure, {@code gate.airflow.notMet.split}
     */
    public String textKey() {
        String key = "gate." + kind.word() + "." + state.word();
        return SEVERAL_WAYS.contains(kind) && !figures.isEmpty()
                ? key + "." + figures.get(0).name()
                : key;
    }

    /**
     * The fields that are missing, as findings.
     *
     * @return one for each field
     */
    public List<Finding> asked() {
        return missing.stream()
                .map(field -> Finding.of(Severity.MUST_BE_SUPPLIED, CommonCode.NOT_GIVEN, Subject.reading(field)))
                .toList();
    }
}

package org.satline.program.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.quantity.Parts;
import org.satline.visit.file.FieldValue;

/**
 * The cylinders of a visit in the making: the one that is asked about stands in the visit as {@code cylinder}, as in a file with one; the
 * others beside it. Immutable.
 *
 * @param visit the visit with the one cylinder, or none
 * @param beside the other cylinders, each with a name
 * @param connected the name of the one that the hose is on, where others are beside it
 */
record CylinderFocus(FieldValue.Fields visit, List<FieldValue.Fields> beside, Optional<String> connected) {
    private static final String ONE = "cylinder";
    private static final String ALL = "cylinders";
    private static final String CONNECTED = "connected";
    private static final String NAME = "name";
    private static final String HOSES = "hoses";

    CylinderFocus {
        Parts.required("visit connected", visit, connected);
        beside = List.copyOf(beside);
    }

    /** Of a file: the connected cylinder is asked about. */
    static CylinderFocus of(FieldValue.Fields file) {
        if (!(FieldTree.get(file, ALL).orElse(null) instanceof FieldValue.Items items)
                || items.values().isEmpty()) {
            return new CylinderFocus(file, List.of(), Optional.empty());
        }
        Optional<String> connected = FieldTree.text(file, CONNECTED);
        FieldValue.Fields visit = FieldTree.without(FieldTree.without(file, ALL), CONNECTED);
        List<FieldValue.Fields> beside = new ArrayList<>();
        for (int i = 0; i < items.values().size(); i++) {
            if (!(items.values().get(i) instanceof FieldValue.Fields each)) {
                // no list of cylinders: the reader of visit files says what is wrong with it
                return new CylinderFocus(file, List.of(), Optional.empty());
            }
            FieldValue.Fields named = FieldTree.has(each, NAME) ? each : FieldTree.put(each, NAME, ALL + "[" + i + "]");
            if (FieldTree.text(named, NAME).equals(connected)) {
                visit = FieldTree.put(visit, ONE, named);
            } else {
                beside.add(named);
            }
        }
        return new CylinderFocus(visit, beside, connected);
    }

    /** As a file. */
    FieldValue.Fields file() {
        if (beside.isEmpty()) {
            return visit;
        }
        List<FieldValue> all = new ArrayList<>();
        cylinder().ifPresent(each -> all.add(FieldTree.has(each, NAME) ? each : FieldTree.put(each, NAME, ONE)));
        all.addAll(beside);
        FieldValue.Fields file = FieldTree.put(FieldTree.without(visit, ONE), ALL, new FieldValue.Items(all));
        Optional<String> on = connected.or(this::name);
        return on.isPresent() ? FieldTree.put(file, CONNECTED, on.get()) : file;
    }

    /** The name of the cylinder that is asked about. */
    Optional<String> name() {
        return cylinder().map(each -> FieldTree.text(each, NAME).orElse(ONE));
    }

    /** The cylinder that is asked about. */
    Optional<FieldValue.Fields> cylinder() {
        return FieldTree.get(visit, ONE)
                .filter(FieldValue.Fields.class::isInstance)
                .map(FieldValue.Fields.class::cast);
    }

    CylinderFocus with(FieldValue.Fields changed) {
        return new CylinderFocus(changed, beside, connected);
    }

    /** One of the others, by what its role or its valve says it is for: {@code recovery} or {@code source}. */
    Optional<String> beside(String use) {
        return beside.stream()
                .filter(each -> FieldTree.text(each, "role")
                        .map(role -> role.equals("receiver") ? "recovery" : role)
                        .or(() -> FieldTree.text(each, "valve"))
                        .filter(said -> said.startsWith(use))
                        .isPresent())
                .flatMap(each -> FieldTree.text(each, NAME).stream())
                .findFirst();
    }

    boolean isBeside(String name) {
        return beside.stream().anyMatch(each -> FieldTree.text(each, NAME).equals(Optional.of(name)));
    }

    /** Asks about another cylinder, known or new, while the hose stays where it is. */
    CylinderFocus aside(Optional<String> name) {
        List<FieldValue.Fields> others = new ArrayList<>();
        cylinder().ifPresent(each -> others.add(FieldTree.put(each, NAME, name().orElse(ONE))));
        FieldValue.Fields now = FieldTree.without(visit, ONE);
        for (FieldValue.Fields each : beside) {
            if (name.isPresent() && FieldTree.text(each, NAME).equals(name)) {
                now = FieldTree.put(now, ONE, each);
            } else {
                others.add(each);
            }
        }
        return new CylinderFocus(now, others, connected.or(this::name));
    }

    /**
     * The hose goes to another cylinder, known or new.
     *
     * @param name of the other; of the same nothing changes
     * @param asBefore the cylinder that the hose leaves, as it was last weighed
     */
    CylinderFocus swapped(String name, Optional<FieldValue.Fields> asBefore) {
        if (name().equals(Optional.of(name))) {
            return this;
        }
        Optional<FieldValue> hoses = cylinder().flatMap(each -> FieldTree.get(each, HOSES));
        FieldValue.Fields left = visit;
        if (cylinder().isPresent()) {
            left = FieldTree.put(
                    left, ONE, FieldTree.without(asBefore.or(this::cylinder).orElseThrow(), HOSES));
        }
        CylinderFocus other = new CylinderFocus(left, beside, Optional.empty()).aside(Optional.of(name));
        FieldValue.Fields now = other.visit();
        if (!FieldTree.has(now, ONE)) {
            now = FieldTree.put(now, ONE + "." + NAME, name);
        }
        if (hoses.isPresent() && !FieldTree.has(now, ONE + "." + HOSES)) {
            now = FieldTree.put(now, ONE + "." + HOSES, hoses.get());
        }
        return new CylinderFocus(now, other.beside(), Optional.of(name));
    }
}

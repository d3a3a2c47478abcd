package org.satline.duty;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.satline.duty.Holder.Kind;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Subject;
import org.satline.filling.Provenance;
import org.satline.refrigerant.Refrigerant;
import org.satline.resource.CsvResource;

/**
 * The rules on where refrigerant may go, as checks on one transfer. They help a certified person; the rule text in force governs.
 * Immutable, thread-safe.
 */
public final class TransferRules {
    /** Released in stated end uses without breaking the ban; the end uses stand in the rule. */
    private static final Set<String> EXEMPT_IN_STATED_USES =
            Set.of("R-744", "R-728", "R-718", "R-717", "R-290", "R-600a", "R-170", "R-441A");

    private final Map<String, Rule> rules;

    private record Rule(String citation) {}

    private TransferRules(Map<String, Rule> rules) {
        this.rules = rules;
    }

    /**
     * Reads the rules that ship with the library.
     *
     * @return the rules
     */
    public static TransferRules standard() {
        Map<String, Rule> rules = new LinkedHashMap<>();
        CsvResource table =
                CsvResource.read(TransferRules.class, "transfer-rules.csv", "name", "citation", "confirmation");
        for (CsvResource.Row row : table.rows()) {
            String citation = row.text("citation");
            boolean memory = row.text("confirmation").equals("memory") && !citation.contains("from memory");
            rules.put(row.text("name"), new Rule(memory ? citation + " (from memory)" : citation));
        }
        return new TransferRules(rules);
    }

    /**
     * Holds a transfer against the rules.
     *
     * @param from where it comes from
     * @param to where it would go
     * @return what forbids it first, then the conditions; empty where no rule says anything
     */
    public List<Finding> check(Holder from, Holder to) {
        List<Finding> found = new ArrayList<>();
        if (from.refrigerant().isPresent()
                && to.refrigerant().isPresent()
                && !from.refrigerant().equals(to.refrigerant())
                && to.kind() != Kind.RECLAIMER) {
            found.add(of(
                    Severity.FORBIDS,
                    DutyCode.MIXING,
                    to,
                    Figure.of("from", from.refrigerant().get().designation()),
                    Figure.of("to", to.refrigerant().get().designation())));
        }
        if (from.refrigerant().isEmpty() && to.kind() == Kind.SYSTEM) {
            found.add(of(
                    Severity.FORBIDS,
                    DutyCode.MIXING,
                    to,
                    Figure.of("from", "?"),
                    Figure.of(
                            "to", to.refrigerant().map(Refrigerant::designation).orElse("?"))));
        }
        if (to.kind() == Kind.SYSTEM) {
            intoSystem(from, to, found);
        }
        if (to.kind() == Kind.SOURCE_CYLINDER && (from.isUsed() || from.kind() == Kind.SYSTEM)) {
            found.add(of(Severity.FORBIDS, DutyCode.SOURCE_SPOILT, to));
        }
        if (to.kind() == Kind.NON_REFILLABLE_CYLINDER) {
            found.add(of(Severity.FORBIDS, DutyCode.NON_REFILLABLE_RECEIVER, to));
        }
        if (to.kind() == Kind.ATMOSPHERE) {
            boolean exempt = from.refrigerant()
                    .map(Refrigerant::designation)
                    .filter(EXEMPT_IN_STATED_USES::contains)
                    .isPresent();
            found.add(
                    exempt
                            ? of(Severity.CAUTION, DutyCode.VENTING_EXEMPTION, from)
                            : of(Severity.FORBIDS, DutyCode.VENTING, from));
        }
        if (from.kind() == Kind.SYSTEM) {
            found.add(of(Severity.CAUTION, DutyCode.CERTIFIED_PERSON, from));
            found.add(of(Severity.CAUTION, DutyCode.RECYCLED_SAME_UNDERTAKING, from));
        }
        return found.stream().sorted(Comparator.comparing(Finding::severity)).toList();
    }

    /** An owner who is not stated may have back what is his own, and nobody else's: two that are not stated are not the same. */
    private void intoSystem(Holder from, Holder to, List<Finding> found) {
        if (from.provenance() == Provenance.MIXED_RECOVERED) {
            found.add(of(Severity.FORBIDS, DutyCode.MIXED_RECOVERED, to));
        }
        if (from.isUsed()) {
            found.add(of(
                    from.owner().equals(to.owner()) ? Severity.CAUTION : Severity.FORBIDS,
                    DutyCode.OTHER_OWNER,
                    to,
                    Figure.of("fromOwner", from.owner()),
                    Figure.of("toOwner", to.owner())));
        }
    }

    private Finding of(Severity severity, DutyCode code, Holder subject, Figure... figures) {
        Rule rule = Objects.requireNonNull(rules.get(code.rule()), code.rule());
        Subject.Kind kind = subject.kind() == Kind.SYSTEM ? Subject.Kind.SYSTEM : Subject.Kind.CYLINDER;
        return Finding.of(severity, code, new Subject(kind, subject.owner()), figures)
                .citing(rule.citation());
    }
}

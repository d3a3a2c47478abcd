package org.satline.duty;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.satline.duty.Holder.Kind;
import org.satline.filling.Provenance;
import org.satline.quantity.Parts;
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

    private record Rule(String name, String text, String citation) {}

    /** What a rule says about a transfer. */
    public enum Answer {
        /** Not allowed. */
        FORBIDDEN,
        /** Allowed under a condition that the person must see to. */
        CONDITION
    }

    /**
     * What one rule says.
     *
     * @param rule the name of the rule
     * @param answer forbidden, or a condition
     * @param text the rule and what it meets here
     * @param citation where it stands
     */
    public record Finding(String rule, Answer answer, String text, String citation) {
        /** {@inheritDoc} */
        public Finding {
            Parts.required("rule answer text citation", rule, answer, text, citation);
        }
    }

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
                CsvResource.read(TransferRules.class, "transfer-rules.csv", "name", "text", "citation", "confirmation");
        for (CsvResource.Row row : table.rows()) {
            String citation = row.text("citation");
            boolean memory = row.text("confirmation").equals("memory") && !citation.contains("from memory");
            rules.put(
                    row.text("name"),
                    new Rule(row.text("name"), row.text("text"), memory ? citation + " (from memory)" : citation));
        }
        return new TransferRules(rules);
    }

    /**
     * Checks a transfer.
     *
     * @param from where the refrigerant is; its refrigerant should be known
     * @param to where it shall go
     * @return what forbids it first, then the conditions; no finding that forbids means that no rule here is against it
     */
    public List<Finding> check(Holder from, Holder to) {
        List<Finding> forbidden = new ArrayList<>();
        List<Finding> conditions = new ArrayList<>();
        if (from.refrigerant().isPresent()
                && to.refrigerant().isPresent()
                && !from.refrigerant().equals(to.refrigerant())
                && to.kind() != Kind.RECLAIMER) {
            forbidden.add(finding(
                    "one-refrigerant",
                    Answer.FORBIDDEN,
                    name(from.refrigerant()) + " would meet " + name(to.refrigerant())));
        }
        if (from.refrigerant().isEmpty() && to.kind() == Kind.SYSTEM) {
            forbidden.add(finding("one-refrigerant", Answer.FORBIDDEN, "what would go into the system is not known"));
        }
        intoSystem(from, to, forbidden, conditions);
        if (to.kind() == Kind.SOURCE_CYLINDER && (from.isUsed() || from.kind() == Kind.SYSTEM)) {
            forbidden.add(finding("source-new-or-reclaimed", Answer.FORBIDDEN, "the refrigerant is used"));
        }
        if (to.kind() == Kind.NON_REFILLABLE_CYLINDER) {
            forbidden.add(finding("refillable-receiver", Answer.FORBIDDEN, "the receiver may not be refilled"));
        }
        if (to.kind() == Kind.ATMOSPHERE) {
            release(from, forbidden, conditions);
        }
        if (from.kind() == Kind.SYSTEM) {
            conditions.add(finding("certified-person", Answer.CONDITION, "refrigerant is taken out of a system"));
            conditions.add(finding("recycled-same-undertaking", Answer.CONDITION, "where the rules of the EU hold"));
        }
        forbidden.addAll(conditions);
        return List.copyOf(forbidden);
    }

    private void intoSystem(Holder from, Holder to, List<Finding> forbidden, List<Finding> conditions) {
        if (to.kind() != Kind.SYSTEM) {
            return;
        }
        if (from.provenance() == Provenance.MIXED_RECOVERED) {
            forbidden.add(
                    finding("no-mixed-recovered", Answer.FORBIDDEN, "the cylinder is of mixed recovered refrigerant"));
        }
        if (from.isUsed()) {
            boolean sameOwner = from.owner().equals(to.owner());
            (sameOwner ? conditions : forbidden)
                    .add(finding(
                            "same-owner",
                            sameOwner ? Answer.CONDITION : Answer.FORBIDDEN,
                            sameOwner
                                    ? "it goes back to " + to.owner() + "; see that it is clean and dry"
                                    : "it belongs to " + from.owner() + ", the system to " + to.owner()));
        }
    }

    private void release(Holder from, List<Finding> forbidden, List<Finding> conditions) {
        boolean exempt = from.refrigerant()
                .map(Refrigerant::designation)
                .filter(EXEMPT_IN_STATED_USES::contains)
                .isPresent();
        if (exempt) {
            conditions.add(finding(
                    "venting-exemption",
                    Answer.CONDITION,
                    name(from.refrigerant())
                            + " may be among them; let out only in the open air and far from any flame"));
        } else {
            forbidden.add(finding("no-venting", Answer.FORBIDDEN, "it would be let out"));
        }
    }

    private static String name(Optional<Refrigerant> refrigerant) {
        return refrigerant.map(Refrigerant::designation).orElse("an unknown refrigerant");
    }

    private Finding finding(String name, Answer answer, String here) {
        Rule rule = Objects.requireNonNull(rules.get(name), name);
        return new Finding(name, answer, here + ": " + rule.text(), rule.citation());
    }
}

package org.satline.filling;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.satline.quantity.Parts;

/**
 * A named set of fill rules that are kept together; the strictest of them governs. Immutable, thread-safe.
 *
 * @param name such as {@code us}
 * @param rules the rules, at least one
 * @param forRecovered the rules that govern recovered contents besides
 */
public record Jurisdiction(String name, List<FillRule> rules, List<FillRule> forRecovered) {
    /** {@inheritDoc} */
    public Jurisdiction {
        Parts.required("name", name);
        rules = Parts.list("rules", rules);
        forRecovered = Parts.list("forRecovered", forRecovered);
        if (rules.isEmpty()) {
            throw new IllegalArgumentException("jurisdiction " + name + " holds no rule; name at least one");
        }
    }

    /** The rules for contents of a provenance; unknown contents are not taken as recovered. */
    List<FillRule> rulesFor(Optional<Provenance> provenance) {
        return provenance.filter(Provenance::isUsed).isPresent()
                ? Stream.concat(rules.stream(), forRecovered.stream())
                        .distinct()
                        .toList()
                : rules;
    }
}

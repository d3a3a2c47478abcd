package org.satline.cylinder;

import java.util.List;
import org.satline.quantity.Parts;

/**
 * A named set of fill rules that are kept together; the strictest of them governs. Immutable, thread-safe.
 *
 * @param name such as {@code us}
 * @param description what the set holds, in words
 * @param rules the rules, at least one
 */
public record Jurisdiction(String name, String description, List<FillRule> rules) {
    /** {@inheritDoc} */
    public Jurisdiction {
        Parts.required("name description", name, description);
        rules = List.copyOf(rules);
        if (rules.isEmpty()) {
            throw new IllegalArgumentException("jurisdiction " + name + " holds no rule; name at least one");
        }
    }
}

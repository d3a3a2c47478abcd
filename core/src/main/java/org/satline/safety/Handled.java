package org.satline.safety;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.satline.refrigerant.Composition;
import org.satline.refrigerant.Refrigerant;
import org.satline.refrigerant.SafetyGroup;

/**
 * What the cautions ask about a refrigerant.
 *
 * @param designation its designation; empty where only the group is known
 * @param group its safety group
 * @param substances designations of its substances; empty where they are not known
 * @param elements symbols of the elements in them
 * @param elementsKnown whether every formula is on record
 */
record Handled(
        String designation,
        Optional<SafetyGroup> group,
        List<String> substances,
        Set<String> elements,
        boolean elementsKnown) {
    static Handled of(SafetyGroup group) {
        return new Handled("", Optional.of(group), List.of(), Set.of(), false);
    }

    static Handled of(Refrigerant refrigerant) {
        List<Refrigerant> substances = refrigerant.hasComposition()
                ? refrigerant.composition().components().stream()
                        .map(Composition.Component::substance)
                        .toList()
                : List.of();
        Set<String> elements = new HashSet<>();
        boolean known = !substances.isEmpty();
        for (Refrigerant substance : substances) {
            known &= substance.formula().isPresent();
            substance.formula().ifPresent(formula -> addElements(formula, elements));
        }
        return new Handled(
                refrigerant.designation(),
                refrigerant.safetyGroup(),
                substances.stream().map(Refrigerant::designation).toList(),
                elements,
                known);
    }

    /** What is not known may be in it. */
    boolean containsAnyOf(Set<String> symbols) {
        return !elementsKnown || symbols.stream().anyMatch(elements::contains);
    }

    /** A symbol is a capital letter and the small one behind it, if any. */
    private static void addElements(String formula, Set<String> elements) {
        for (int i = 0; i < formula.length(); i++) {
            if (isCapital(formula.charAt(i))) {
                boolean two = i + 1 < formula.length() && isSmall(formula.charAt(i + 1));
                elements.add(formula.substring(i, two ? i + 2 : i + 1));
            }
        }
    }

    private static boolean isCapital(char c) {
        return c >= 'A' && c <= 'Z';
    }

    private static boolean isSmall(char c) {
        return c >= 'a' && c <= 'z';
    }
}

package org.satline.equation;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.satline.resource.ResourceFormatException;

/**
 * What a caller adds to the library. Immutable.
 *
 * @param equations by designation
 * @param checks printed values by designation
 * @param pairs by {@link PairInteraction#key}
 */
record OwnEquations(
        Map<String, PureEquation> equations,
        Map<String, List<EquationCheck>> checks,
        Map<String, PairInteraction> pairs) {
    static final OwnEquations NONE = new OwnEquations(Map.of(), Map.of(), Map.of());

    OwnEquations with(Map<String, byte[]> given, EquationLibrary library) {
        EquationFiles files = EquationFiles.of(given);
        String designation = PureEquationReader.designationIn("", files);
        if (library.hasEquation(designation)) {
            throw new IllegalArgumentException(designation
                    + " has an equation in this library, which is not replaced; give your own another designation");
        }
        List<EquationCheck> printed = EquationCheck.read(designation, PureEquationReader.CHECK_VALUES, files);
        if (printed.isEmpty()) {
            throw new ResourceFormatException(
                    PureEquationReader.CHECK_VALUES, 0, "has no rows; give a value that the paper prints");
        }
        Map<String, PureEquation> grown = new HashMap<>(equations);
        grown.put(designation, PureEquationReader.read(designation, "", files));
        Map<String, List<EquationCheck>> checked = new HashMap<>(checks);
        checked.put(designation, printed);
        return new OwnEquations(Map.copyOf(grown), Map.copyOf(checked), pairs);
    }

    OwnEquations withPairs(Map<String, PairInteraction> more) {
        Map<String, PairInteraction> grown = new HashMap<>(pairs);
        grown.putAll(more);
        return new OwnEquations(equations, checks, Map.copyOf(grown));
    }
}

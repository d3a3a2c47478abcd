package org.satline.page;

import java.util.List;
import java.util.function.Predicate;
import org.satline.visit.file.FieldValue;

/**
 * One question. Immutable.
 *
 * @param path the field that the answer fills
 * @param part to which part of the visit it belongs
 * @param kind how it is answered
 * @param arises whether it arises in a visit
 */
record Ask(String path, Part part, Kind kind, Predicate<FieldValue.Fields> arises) {
    /** Parts of a visit, in the order in which they are asked for. */
    enum Part {
        SYSTEM,
        READINGS,
        CONDITIONS,
        CYLINDER,
        HOSE,
        KIT
    }

    /** How a question is answered. */
    sealed interface Kind {
        /** A number with a unit, those for US units first. */
        record Measure(String us, String si, List<String> units) implements Kind {}

        /** One of some words. */
        record Choice(List<String> words) implements Kind {}

        /** Yes or no. */
        record Flag() implements Kind {}

        /** Any line. */
        record Line() implements Kind {}

        /** A day. */
        record Day() implements Kind {}

        /** The name of a refrigerant. */
        record Gas() implements Kind {}
    }

    Ask when(Predicate<FieldValue.Fields> condition) {
        return new Ask(path, part, kind, condition);
    }
}

package org.satline.audit;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.satline.audit.answer.AuditCase;
import org.satline.audit.answer.AuditCase.Expected;
import org.satline.audit.answer.AuditCase.Neighbours;

/**
 * Tells rows what stands beside them in the same column, as they pass by in the order of their file. Not thread-safe.
 *
 * @param <T> what goes along with each row
 */
final class Seating<T> {
    private record Waiting<T>(AuditCase row, T along, Optional<Expected> before) {
        AuditCase beside(Optional<Expected> after) {
            return row.beside(new Neighbours(before, after));
        }
    }

    private final Map<String, Waiting<T>> waiting = new HashMap<>();
    private final BiConsumer<AuditCase, T> seated;

    /**
     * Sets out.
     *
     * @param seated takes each row as soon as the one after it is known
     */
    Seating(BiConsumer<AuditCase, T> seated) {
        this.seated = seated;
    }

    void add(AuditCase row, T along) {
        String key = row.column();
        Waiting<T> previous = waiting.get(key);
        Optional<Expected> before = Optional.empty();
        if (previous != null) {
            seated.accept(previous.beside(Optional.of(row.plain())), previous.along);
            before = Optional.of(previous.row.plain());
        }
        waiting.put(key, new Waiting<>(row, along, before));
    }

    void finish() {
        waiting.values().forEach(last -> seated.accept(last.beside(Optional.empty()), last.along));
        waiting.clear();
    }
}

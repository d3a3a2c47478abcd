package org.satline.audit;

import java.util.Optional;
import java.util.function.Consumer;
import org.satline.audit.answer.AuditRow;
import org.satline.quantity.Parts;

/** Where the rows of an audit come from; they are read twice, the same each time, and need not fit into memory. */
@FunctionalInterface
public interface AuditSource {
    /**
     * Hands out all rows in their order.
     *
     * @param taker takes each row
     */
    void read(Consumer<Entry> taker);

    /**
     * A row as it was read. Immutable.
     *
     * @param row the row, as far as it could be read
     * @param fault what cannot be read in it, one line; empty where everything can
     */
    record Entry(AuditRow row, Optional<String> fault) {
        /** {@inheritDoc} */
        public Entry {
            Parts.required("row fault", row, fault);
        }
    }
}

package org.satline.safety;

import org.satline.explanation.FindingCode;
import org.satline.quantity.Parts;

/**
 * A caution as the code of a finding. Immutable, thread-safe.
 *
 * @param id the id of the caution, camel case and stable between releases
 */
public record CautionId(String id) implements FindingCode {
    /** {@inheritDoc} */
    public CautionId {
        Parts.required("id", id);
    }

    @Override
    public String word() {
        return id;
    }
}

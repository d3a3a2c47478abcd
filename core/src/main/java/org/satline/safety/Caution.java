package org.satline.safety;

import java.util.List;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Subject;
import org.satline.quantity.Parts;

/**
 * Something to know before a hand is moved; its text is in the room {@code wording}, under the id. Immutable, thread-safe.
 *
 * @param id what it is, camel case and stable between releases; a whole text where a room has not parted with words yet
 * @param basis the citation, or {@code common practice, no source}
 */
public record Caution(String id, String basis) {
    /** {@inheritDoc} */
    public Caution {
        Parts.required("id basis", id, basis);
    }

    /**
     * The id, which is the text itself in rooms that have not parted with words yet.
     *
     * @return the id
     */
    public String text() {
        return id;
    }

    /**
     * The caution as a finding, which forbids nothing by itself.
     *
     * @param subject what it is about
     * @return the finding, of severity {@link Severity#CAUTION}
     */
    public Finding finding(Subject subject) {
        return new Finding(Severity.CAUTION, new CautionId(id), subject, List.of(), basis);
    }
}

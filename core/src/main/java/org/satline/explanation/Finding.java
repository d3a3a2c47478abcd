package org.satline.explanation;

import java.util.List;
import java.util.Optional;
import org.satline.quantity.Parts;

/**
 * Something that was found and matters for what is done next: data, without a sentence. Immutable, thread-safe.
 *
 * @param severity how much it weighs
 * @param code what it is
 * @param subject what it is about
 * @param figures the numbers and words that belong to it, each under its name
 * @param basis the citation, or {@code common practice, no source}
 */
public record Finding(Severity severity, FindingCode code, Subject subject, List<Figure> figures, String basis) {
    /** Basis of a rule of the trade that nobody published. */
    public static final String PRACTICE = "common practice, no source";

    /** {@inheritDoc} */
    public Finding {
        Parts.required("severity code subject basis", severity, code, subject, basis);
        figures = Parts.list("figures", figures);
    }

    /**
     * A finding on common practice.
     *
     * @param severity how much it weighs
     * @param code what it is
     * @param subject what it is about
     * @param figures numbers and words
     * @return the finding
     */
    public static Finding of(Severity severity, FindingCode code, Subject subject, Figure... figures) {
        Parts.required("figures", (Object) figures);
        return new Finding(severity, code, subject, List.of(figures), PRACTICE);
    }

    /**
     * The same finding on a published basis.
     *
     * @param citation the citation
     * @return the changed finding
     */
    public Finding citing(String citation) {
        return new Finding(severity, code, subject, figures, citation);
    }

    /**
     * The same finding with another weight.
     *
     * @param other the weight
     * @return the changed finding
     */
    public Finding as(Severity other) {
        return new Finding(other, code, subject, figures, basis);
    }

    /**
     * A figure by its name.
     *
     * @param name the name
     * @return the figure, where there is one of that name
     */
    public Optional<Figure> figure(String name) {
        return figures.stream().filter(each -> each.name().equals(name)).findFirst();
    }
}

package org.satline.equation;

import org.jspecify.annotations.Nullable;
import org.satline.quantity.Parts;

/**
 * Where coefficients were published.
 *
 * @param authors authors, as printed
 * @param title title of the paper
 * @param publication journal, volume, year and pages, or what stands for them
 * @param doi digital object identifier, or null where there is none
 * @param uncertainty the stated uncertainty in the source's words, or null where none is on record here
 * @param note a remark on the figures, or null
 */
public record EquationSource(
        String authors,
        String title,
        String publication,
        @Nullable String doi,
        @Nullable String uncertainty,
        @Nullable String note) {
    /** {@inheritDoc} */
    public EquationSource {
        Parts.required("authors title publication", authors, title, publication);
    }

    /**
     * Returns a one-line citation.
     *
     * @return authors, publication and identifier
     */
    public String citation() {
        return authors + ", " + publication + (doi == null ? "" : ", doi:" + doi);
    }
}

package org.satline.equation;

import java.util.List;
import org.satline.SatlineException;

/** A refrigerant is known by name, but a substance in it has no equation of state here. */
public final class MissingEquationException extends IllegalArgumentException implements SatlineException {
    private static final long serialVersionUID = 1L;

    private final transient List<String> substances;

    MissingEquationException(String refrigerant, List<String> substances) {
        super(refrigerant + " is listed without numbers: no equation of state is included for "
                + String.join(", ", substances)
                + "; ask for its designation, composition or safety group only");
        this.substances = List.copyOf(substances);
    }

    /**
     * Returns the substances that lack an equation.
     *
     * @return their designations
     */
    public List<String> substances() {
        return substances;
    }

    @Override
    public Origin origin() {
        return Origin.QUESTION;
    }
}

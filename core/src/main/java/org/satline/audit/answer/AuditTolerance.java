package org.satline.audit.answer;

import java.util.List;
import org.satline.explanation.Coded;
import org.satline.quantity.Parts;

/**
 * What an answer may differ from ours, in the unit of the answer, and where that comes from. Immutable.
 *
 * @param width the sum of the shares, at least 0
 * @param shares what it consists of, not empty
 */
public record AuditTolerance(double width, List<Share> shares) {
    /** Where a tolerance can come from. */
    public enum Origin implements Coded {
        /** Stated uncertainty of the equations or of the mixture model: expanded, coverage factor 2. */
        EQUATION,
        /** The same, as remembered: the statement was not read again. */
        FROM_MEMORY,
        /** Assumed: no statement of the equation's uncertainty was read. */
        ASSUMED,
        /** Rounding of the answer: half of its last digit. */
        PRINTED_DIGITS,
        /** The person who asks; nothing is added to it. */
        USER
    }

    /**
     * One share of a tolerance.
     *
     * @param origin where it comes from
     * @param width in the unit of the answer, at least 0
     * @param basis the statement that it rests on
     */
    public record Share(Origin origin, double width, String basis) {
        /** {@inheritDoc} */
        public Share {
            Parts.required("origin basis", origin, basis);
            Parts.numbers("width", width);
        }
    }

    /** {@inheritDoc} */
    public AuditTolerance {
        shares = Parts.list("shares", shares);
        if (!(width >= 0 && width < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("tolerance " + width + " is not finite and at least 0");
        }
    }

    static AuditTolerance of(List<Share> shares) {
        return new AuditTolerance(shares.stream().mapToDouble(Share::width).sum(), shares);
    }

    /**
     * Returns where most of it comes from.
     *
     * @return origin of the widest share
     */
    public Origin origin() {
        Share widest = shares.get(0);
        for (Share share : shares) {
            widest = share.width() > widest.width() ? share : widest;
        }
        return widest.origin();
    }
}

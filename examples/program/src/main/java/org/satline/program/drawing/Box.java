package org.satline.program.drawing;

/**
 * A rectangle in a drawing, in its units; y counts downwards.
 *
 * @param left smallest x
 * @param top smallest y
 * @param width to the right
 * @param height down
 */
public record Box(double left, double top, double width, double height) {
    /**
     * Returns its right edge.
     *
     * @return largest x
     */
    public double right() {
        return left + width;
    }

    /**
     * Returns its lower edge.
     *
     * @return largest y
     */
    public double bottom() {
        return top + height;
    }

    boolean holds(Box other) {
        return other.left >= left && other.right() <= right() && other.top >= top && other.bottom() <= bottom();
    }

    boolean meets(Box other) {
        return left < other.right() && other.left < right() && top < other.bottom() && other.top < bottom();
    }
}

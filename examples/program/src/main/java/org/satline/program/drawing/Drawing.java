package org.satline.program.drawing;

import java.util.List;
import java.util.function.Consumer;

/**
 * A finished drawing.
 *
 * @param title what it is
 * @param description what it shows, for those who cannot see it
 * @param width width in units of the drawing
 * @param height height in units of the drawing
 * @param shapes what is drawn, the later over the earlier
 */
public record Drawing(String title, String description, int width, int height, List<Shape> shapes) {
    /** {@inheritDoc} */
    public Drawing {
        shapes = List.copyOf(shapes);
    }

    /**
     * Hands on each shape that is not made of others.
     *
     * @param each takes it
     */
    public void forEach(Consumer<Shape> each) {
        visit(shapes, each);
    }

    private static void visit(List<Shape> shapes, Consumer<Shape> each) {
        for (Shape shape : shapes) {
            if (shape instanceof Shape.Clipped clipped) {
                visit(clipped.shapes(), each);
            } else {
                each.accept(shape);
            }
        }
    }
}

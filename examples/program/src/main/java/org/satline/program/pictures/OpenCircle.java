package org.satline.program.pictures;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import org.knowm.xchart.style.markers.Marker;

/** A white circle with a rim: what is drawn but was not measured. */
final class OpenCircle extends Marker {
    static final Marker MARKER = new OpenCircle();

    private OpenCircle() {}

    @Override
    public void paint(Graphics2D g, double x, double y, int size) {
        Shape circle = new Ellipse2D.Double(x - size / 2.0, y - size / 2.0, size, size);
        Color rim = g.getColor();
        g.setColor(Color.WHITE);
        g.fill(circle);
        g.setColor(rim);
        g.setStroke(new BasicStroke(2f));
        g.draw(circle);
    }
}

package org.satline.program.print;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import javax.imageio.ImageIO;
import org.satline.program.drawing.Box;
import org.satline.program.drawing.Drawing;
import org.satline.program.drawing.Ink;
import org.satline.program.drawing.Pen;
import org.satline.program.drawing.Point;
import org.satline.program.drawing.Shape;

/** Paints a drawing into pixels, with the sans-serif face of the Java at hand. Used once. */
final class PixelWriter {
    private static final int SCALE = 3;

    private final Graphics2D g;

    private PixelWriter(Graphics2D g) {
        this.g = g;
    }

    static void write(Drawing drawing, OutputStream out) throws IOException {
        BufferedImage image =
                new BufferedImage(SCALE * drawing.width(), SCALE * drawing.height(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            g.scale(SCALE, SCALE);
            PixelWriter writer = new PixelWriter(g);
            drawing.shapes().forEach(writer::paint);
        } finally {
            g.dispose();
        }
        if (!ImageIO.write(image, "png", out)) {
            throw new IOException("this Java has no writer for PNG");
        }
    }

    private void paint(Shape shape) {
        if (shape instanceof Shape.Line line) {
            g.setColor(colour(line.ink()));
            g.setStroke(stroke(line.pen()));
            g.draw(path(line.points()));
        } else if (shape instanceof Shape.Area area) {
            Path2D path = path(area.points());
            path.closePath();
            g.setColor(colour(area.fill()));
            g.fill(path);
            if (area.rimWidth() > 0) {
                g.setColor(colour(area.rim()));
                g.setStroke(new BasicStroke((float) area.rimWidth()));
                g.draw(path);
            }
        } else if (shape instanceof Shape.Disc disc) {
            double r = disc.radius();
            Ellipse2D circle =
                    new Ellipse2D.Double(disc.centre().x() - r, disc.centre().y() - r, 2 * r, 2 * r);
            g.setColor(colour(disc.fill()));
            g.fill(circle);
            g.setColor(colour(disc.rim()));
            g.setStroke(new BasicStroke(2));
            g.draw(circle);
        } else if (shape instanceof Shape.Text text) {
            text(text);
        } else if (shape instanceof Shape.Clipped clipped) {
            java.awt.Shape before = g.getClip();
            Box box = clipped.box();
            g.clip(new Rectangle2D.Double(box.left(), box.top(), box.width(), box.height()));
            clipped.shapes().forEach(this::paint);
            g.setClip(before);
        }
    }

    private void text(Shape.Text text) {
        Font font = new Font(Font.SANS_SERIF, text.weight() == Shape.Weight.BOLD ? Font.BOLD : Font.PLAIN, text.size());
        TextLayout layout = new TextLayout(text.words(), font, g.getFontRenderContext());
        double before = switch (text.anchor()) {
            case START -> 0;
            case MIDDLE -> layout.getAdvance() / 2;
            case END -> layout.getAdvance();
        };
        AffineTransform place =
                AffineTransform.getTranslateInstance(text.at().x(), text.at().y());
        if (text.turn() == Shape.Turn.UPWARDS) {
            place.quadrantRotate(-1);
        }
        place.translate(-before, 0);
        java.awt.Shape outline = layout.getOutline(place);
        if (text.rim() == Shape.Rim.WHITE) {
            g.setColor(Color.WHITE);
            g.setStroke(new BasicStroke(4, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.draw(outline);
        }
        g.setColor(colour(Ink.BLACK));
        g.fill(outline);
    }

    private static Color colour(Ink ink) {
        return new Color(ink.rgb());
    }

    private static BasicStroke stroke(Pen pen) {
        List<Double> dash = pen.dash();
        float[] lengths = new float[dash.size()];
        for (int i = 0; i < lengths.length; i++) {
            lengths[i] = dash.get(i).floatValue();
        }
        return new BasicStroke(
                (float) pen.width(),
                BasicStroke.CAP_BUTT,
                BasicStroke.JOIN_ROUND,
                10,
                lengths.length == 0 ? null : lengths,
                0);
    }

    private static Path2D path(List<Point> points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points.get(0).x(), points.get(0).y());
        points.subList(1, points.size()).forEach(point -> path.lineTo(point.x(), point.y()));
        return path;
    }
}

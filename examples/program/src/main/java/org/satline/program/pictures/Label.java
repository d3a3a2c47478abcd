package org.satline.program.pictures;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import org.knowm.xchart.AnnotationText;

/** A short text at a point of a picture, on a white rim so that lines behind it do not cross it out. */
final class Label extends AnnotationText {
    private static final int GAP = 7;

    /** On which side of its point a label stands. */
    enum Side {
        RIGHT,
        LEFT,
        ABOVE,
        BELOW,
        /** Below, beginning at the point. */
        BELOW_ONWARDS,
        /** Above, ending at the point. */
        ABOVE_UP_TO,
        CENTRE,
        LEFT_EDGE,
        LOWER_EDGE
    }

    private final String words;
    private final Side side;
    private final int size;
    private final boolean bold;

    private Label(String words, double x, double y, Side side, int size, boolean bold) {
        super(words, x, y, false);
        this.words = words;
        this.side = side;
        this.size = size;
        this.bold = bold;
    }

    static Label of(String words, double x, double y, Side side) {
        return new Label(words, x, y, side, Look.LABEL_SIZE, false);
    }

    static Label bold(String words, double x, double y, Side side) {
        return new Label(words, x, y, side, Look.LABEL_SIZE + 2, true);
    }

    static Label atLeftEdge(double tick, int size) {
        return new Label(plain(tick), 0, tick, Side.LEFT_EDGE, size, false);
    }

    static Label atLowerEdge(double tick, int size) {
        return new Label(plain(tick), tick, 0, Side.LOWER_EDGE, size, false);
    }

    private static String plain(double tick) {
        return new BigDecimal(Double.toString(tick)).stripTrailingZeros().toPlainString();
    }

    String words() {
        return words;
    }

    @Override
    public void paint(Graphics2D g) {
        FontRenderContext context = new FontRenderContext(null, true, true);
        TextLayout layout = new TextLayout(words, Look.font(bold ? Font.BOLD : Font.PLAIN, size), context);
        Rectangle2D box = layout.getBounds();
        double width = box.getWidth();
        double height = box.getHeight();
        boolean onLeftEdge = side == Side.LEFT_EDGE;
        boolean onLowerEdge = side == Side.LOWER_EDGE;
        double atX = onLeftEdge ? getXAxisScreenValueForMin() - 4 : getXAxisScreenValue(x);
        // the library counts screen rows downwards and calls the lowest one the largest
        double atY = onLowerEdge ? getYAxisScreenValueForMax() : getYAxisScreenValue(y);
        double left = switch (side) {
            case RIGHT -> atX + GAP;
            case LEFT, LEFT_EDGE, ABOVE_UP_TO -> atX - GAP - width;
            case BELOW_ONWARDS -> atX + GAP;
            case ABOVE, BELOW, CENTRE, LOWER_EDGE -> atX - width / 2;
        };
        double top = switch (side) {
            case RIGHT, LEFT, CENTRE, LEFT_EDGE -> atY - height / 2;
            case ABOVE, ABOVE_UP_TO -> atY - GAP - height;
            case BELOW, BELOW_ONWARDS -> atY + GAP;
            case LOWER_EDGE -> atY + GAP + 5;
        };
        Shape outline = layout.getOutline(AffineTransform.getTranslateInstance(left - box.getX(), top - box.getY()));
        if (!onLeftEdge && !onLowerEdge) {
            g.setColor(Color.WHITE);
            g.setStroke(new BasicStroke(4f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.draw(outline);
        }
        g.setColor(Look.INK);
        g.fill(outline);
    }
}

package org.satline.program.print;

import java.awt.Color;
import java.io.IOException;
import java.io.OutputStream;
import java.text.Normalizer;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.satline.program.drawing.Box;
import org.satline.program.drawing.Drawing;
import org.satline.program.drawing.Ink;
import org.satline.program.drawing.Point;
import org.satline.program.drawing.Shape;

/**
 * Writes a drawing as a PDF of one page of its size, a point for a unit; type is of the standard faces, which every reader has. Used once.
 */
final class PdfWriter {
    /** Length of the handle of a curve that draws a quarter of a circle. */
    private static final double QUARTER = 4 * (Math.sqrt(2) - 1) / 3;

    private final PDPageContentStream page;
    private final double height;
    private final PDFont plain = new PDType1Font(Standard14Fonts.FontName.HELVETICA);
    private final PDFont bold = new PDType1Font(Standard14Fonts.FontName.HELVETICA_BOLD);

    private PdfWriter(PDPageContentStream page, double height) {
        this.page = page;
        this.height = height;
    }

    static void write(Drawing drawing, OutputStream out) throws IOException {
        try (PDDocument document = new PDDocument()) {
            document.getDocumentInformation().setTitle(drawing.title());
            document.getDocumentInformation().setSubject(drawing.description());
            PDPage sheet = new PDPage(new PDRectangle(drawing.width(), drawing.height()));
            document.addPage(sheet);
            try (PDPageContentStream page = new PDPageContentStream(document, sheet)) {
                PdfWriter writer = new PdfWriter(page, drawing.height());
                page.setLineJoinStyle(1);
                for (Shape shape : drawing.shapes()) {
                    writer.write(shape);
                }
            }
            document.save(out);
        }
    }

    private void write(Shape shape) throws IOException {
        if (shape instanceof Shape.Line line) {
            page.setStrokingColor(colour(line.ink()));
            page.setLineWidth((float) line.pen().width());
            page.setLineDashPattern(dash(line.pen().dash()), 0);
            path(line.points());
            page.stroke();
        } else if (shape instanceof Shape.Area area) {
            page.setNonStrokingColor(colour(area.fill()));
            page.setStrokingColor(colour(area.rim()));
            page.setLineWidth((float) area.rimWidth());
            page.setLineDashPattern(new float[0], 0);
            path(area.points());
            page.closePath();
            if (area.rimWidth() > 0) {
                page.fillAndStroke();
            } else {
                page.fill();
            }
        } else if (shape instanceof Shape.Disc disc) {
            disc(disc);
        } else if (shape instanceof Shape.Text text) {
            text(text);
        } else if (shape instanceof Shape.Clipped clipped) {
            Box box = clipped.box();
            page.saveGraphicsState();
            page.addRect(x(box.left()), y(box.bottom()), (float) box.width(), (float) box.height());
            page.clip();
            for (Shape each : clipped.shapes()) {
                write(each);
            }
            page.restoreGraphicsState();
        }
    }

    private void disc(Shape.Disc disc) throws IOException {
        double cx = disc.centre().x();
        double cy = disc.centre().y();
        double r = disc.radius();
        double h = r * QUARTER;
        page.setNonStrokingColor(colour(disc.fill()));
        page.setStrokingColor(colour(disc.rim()));
        page.setLineWidth(2);
        page.setLineDashPattern(new float[0], 0);
        page.moveTo(x(cx + r), y(cy));
        curve(cx + r, cy + h, cx + h, cy + r, cx, cy + r);
        curve(cx - h, cy + r, cx - r, cy + h, cx - r, cy);
        curve(cx - r, cy - h, cx - h, cy - r, cx, cy - r);
        curve(cx + h, cy - r, cx + r, cy - h, cx + r, cy);
        page.closePath();
        page.fillAndStroke();
    }

    private void curve(double x1, double y1, double x2, double y2, double x3, double y3) throws IOException {
        page.curveTo(x(x1), y(y1), x(x2), y(y2), x(x3), y(y3));
    }

    private void text(Shape.Text text) throws IOException {
        PDFont font = text.weight() == Shape.Weight.BOLD ? bold : plain;
        String words = encodable(font, text.words());
        double width = font.getStringWidth(words) * text.size() / 1000;
        double before = switch (text.anchor()) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
        };
        double angle = text.turn() == Shape.Turn.UPWARDS ? Math.PI / 2 : 0;
        double left = x(text.at().x()) - before * Math.cos(angle);
        double base = y(text.at().y()) - before * Math.sin(angle);
        if (text.rim() == Shape.Rim.WHITE) {
            page.setStrokingColor(colour(Ink.WHITE));
            page.setLineWidth(4);
            page.setLineDashPattern(new float[0], 0);
            show(font, text.size(), words, RenderingMode.STROKE, angle, left, base);
        }
        page.setNonStrokingColor(colour(Ink.BLACK));
        show(font, text.size(), words, RenderingMode.FILL, angle, left, base);
    }

    private void show(PDFont font, int size, String words, RenderingMode mode, double angle, double left, double base)
            throws IOException {
        page.beginText();
        page.setFont(font, size);
        page.setRenderingMode(mode);
        page.setTextMatrix(Matrix.getRotateInstance(angle, (float) left, (float) base));
        page.showText(words);
        page.endText();
    }

    /** The standard faces hold the letters of western Europe: of others the letter without its accent, or a question mark. */
    private static String encodable(PDFont font, String words) {
        StringBuilder shown = new StringBuilder();
        for (int c : words.codePoints().toArray()) {
            String letter = Character.toString(c);
            String bare = Normalizer.normalize(letter, Normalizer.Form.NFD).substring(0, 1);
            shown.append(has(font, letter) ? letter : has(font, bare) ? bare : "?");
        }
        return shown.toString();
    }

    private static boolean has(PDFont font, String letter) {
        try {
            font.encode(letter);
            return true;
        } catch (IllegalArgumentException | IOException e) {
            return false; // the library's way to say so
        }
    }

    private void path(List<Point> points) throws IOException {
        page.moveTo(x(points.get(0).x()), y(points.get(0).y()));
        for (Point point : points.subList(1, points.size())) {
            page.lineTo(x(point.x()), y(point.y()));
        }
    }

    private static float x(double x) {
        return (float) x;
    }

    private float y(double y) {
        return (float) (height - y);
    }

    private static Color colour(Ink ink) {
        return new Color(ink.rgb());
    }

    private static float[] dash(List<Double> lengths) {
        float[] dash = new float[lengths.size()];
        for (int i = 0; i < dash.length; i++) {
            dash[i] = lengths.get(i).floatValue();
        }
        return dash;
    }
}

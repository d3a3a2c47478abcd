package org.satline.program.drawing;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.satline.program.page.Escape;
import org.satline.program.page.Printed;

/**
 * Writes a drawing as SVG 1.1 that is fit to keep: text as text, no reference to anything outside, title and description for screen
 * readers, names that do not meet those of another drawing in the same page, size that follows the page, numbers to a hundredth of a unit.
 */
public final class SvgWriter {
    /** Namespace of SVG (W3C, Scalable Vector Graphics 1.1). */
    public static final String NAMESPACE = "http://www.w3.org/2000/svg";

    private static final Pattern NAME = Pattern.compile("[A-Za-z][A-Za-z0-9-]{0,40}");

    private final StringBuilder svg = new StringBuilder();
    private final String name;
    private int clips;

    private SvgWriter(String name) {
        this.name = name;
    }

    /**
     * Writes a file of its own.
     *
     * @param drawing what is drawn
     * @return an SVG document
     */
    public static String file(Drawing drawing) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + element(drawing, "picture") + "\n";
    }

    /**
     * Writes an element to stand inside a page.
     *
     * @param drawing what is drawn
     * @param name begins every name inside; letters, digits and hyphens
     * @return an SVG element
     * @throws IllegalArgumentException if the name is another one
     */
    public static String element(Drawing drawing, String name) {
        if (!NAME.matcher(name).matches()) {
            throw new IllegalArgumentException(
                    "name \"" + Escape.plain(name) + "\" is not of letters, digits and hyphens");
        }
        return new SvgWriter(name).write(drawing);
    }

    private String write(Drawing drawing) {
        svg.append("<svg xmlns=\"" + NAMESPACE + "\" version=\"1.1\" role=\"img\" aria-labelledby=\"")
                .append(name)
                .append("-title ")
                .append(name)
                .append("-desc\" viewBox=\"0 0 ")
                .append(drawing.width())
                .append(' ')
                .append(drawing.height())
                .append("\" font-family=\"sans-serif\"><title id=\"")
                .append(name)
                .append("-title\">")
                .append(Escape.html(drawing.title()))
                .append("</title><desc id=\"")
                .append(name)
                .append("-desc\">")
                .append(Escape.html(drawing.description()))
                .append("</desc>");
        drawing.shapes().forEach(this::write);
        return svg.append("</svg>").toString();
    }

    private void write(Shape shape) {
        if (shape instanceof Shape.Line line) {
            svg.append("<polyline style=\"fill:none;stroke:")
                    .append(line.ink().hex())
                    .append(";stroke-width:")
                    .append(number(line.pen().width()))
                    .append(";stroke-linejoin:round;")
                    .append(dash(line.pen().dash()))
                    .append("\" points=\"")
                    .append(points(line.points()))
                    .append("\"/>");
        } else if (shape instanceof Shape.Area area) {
            svg.append("<polygon style=\"fill:")
                    .append(area.fill().hex())
                    .append(area.rimWidth() > 0 ? ";stroke:" + area.rim().hex() : "")
                    .append(area.rimWidth() > 0 ? ";stroke-width:" + number(area.rimWidth()) : "")
                    .append("\" points=\"")
                    .append(points(area.points()))
                    .append("\"/>");
        } else if (shape instanceof Shape.Disc disc) {
            svg.append("<circle style=\"fill:")
                    .append(disc.fill().hex())
                    .append(";stroke:")
                    .append(disc.rim().hex())
                    .append(";stroke-width:2\" cx=\"")
                    .append(number(disc.centre().x()))
                    .append("\" cy=\"")
                    .append(number(disc.centre().y()))
                    .append("\" r=\"")
                    .append(number(disc.radius()))
                    .append("\"/>");
        } else if (shape instanceof Shape.Text text) {
            text(text);
        } else if (shape instanceof Shape.Clipped clipped) {
            clipped(clipped);
        }
    }

    private void clipped(Shape.Clipped clipped) {
        String id = name + "-clip" + ++clips;
        Box box = clipped.box();
        svg.append("<clipPath id=\"")
                .append(id)
                .append("\"><rect x=\"")
                .append(number(box.left()))
                .append("\" y=\"")
                .append(number(box.top()))
                .append("\" width=\"")
                .append(number(box.width()))
                .append("\" height=\"")
                .append(number(box.height()))
                .append("\"/></clipPath><g clip-path=\"url(#")
                .append(id)
                .append(")\">");
        clipped.shapes().forEach(this::write);
        svg.append("</g>");
    }

    private void text(Shape.Text text) {
        String at =
                "x=\"" + number(text.at().x()) + "\" y=\"" + number(text.at().y()) + "\"";
        svg.append("<text ").append(at);
        if (text.turn() == Shape.Turn.UPWARDS) {
            svg.append(" transform=\"rotate(-90 ")
                    .append(number(text.at().x()))
                    .append(' ')
                    .append(number(text.at().y()))
                    .append(")\"");
        }
        svg.append(" font-size=\"").append(text.size()).append('"');
        svg.append(text.weight() == Shape.Weight.BOLD ? " font-weight=\"bold\"" : "");
        svg.append(
                switch (text.anchor()) {
                    case START -> "";
                    case MIDDLE -> " text-anchor=\"middle\"";
                    case END -> " text-anchor=\"end\"";
                });
        svg.append(" style=\"fill:").append(Ink.BLACK.hex());
        svg.append(
                text.rim() == Shape.Rim.WHITE
                        ? ";stroke:#ffffff;stroke-width:4;stroke-linejoin:round;paint-order:stroke\">"
                        : "\">");
        svg.append(Escape.html(text.words())).append("</text>");
    }

    private static String dash(List<Double> dash) {
        return dash.isEmpty()
                ? ""
                : dash.stream().map(SvgWriter::number).collect(Collectors.joining(",", "stroke-dasharray:", ";"));
    }

    private static String points(List<Point> points) {
        return points.stream()
                .map(point -> number(point.x()) + "," + number(point.y()))
                .collect(Collectors.joining(" "));
    }

    private static String number(double value) {
        String text = Printed.figure("%.2f", value);
        return text.replaceAll("\\.?0+$", "").replaceAll("^-0?$", "0");
    }
}

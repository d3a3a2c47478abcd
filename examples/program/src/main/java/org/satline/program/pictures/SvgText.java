package org.satline.program.pictures;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.knowm.xchart.VectorGraphicsEncoder;
import org.knowm.xchart.VectorGraphicsEncoder.VectorGraphicsFormat;
import org.satline.program.page.Printed;
import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;

/**
 * Turns a drawn chart into SVG that is fit to keep: no reference to anything outside, title and description for screen readers, names that
 * do not meet those of another picture in the same page, size that follows the page, numbers to a hundredth of a unit.
 */
final class SvgText {
    static final String SVG = "http://www.w3.org/2000/svg";
    private static final Pattern NAME = Pattern.compile("[A-Za-z][A-Za-z0-9-]{0,40}");
    private static final Pattern LONG_NUMBER = Pattern.compile("-?\\d+\\.\\d{3,}");
    private static final Pattern REFERENCE = Pattern.compile("url\\(#([^)]+)\\)");

    private SvgText() {}

    static String file(Picture picture) {
        Document document = document(picture, "picture");
        SvgNotes.write(document.getDocumentElement(), picture);
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + text(document) + "\n";
    }

    static String element(Picture picture, String name) {
        if (!NAME.matcher(name).matches()) {
            throw new IllegalArgumentException("name \"" + name + "\" is not of letters, digits and hyphens");
        }
        return text(document(picture, name));
    }

    private static Document document(Picture picture, String name) {
        Document document = parsed(drawn(picture));
        Element root = document.getDocumentElement();
        Map<String, String> names = new HashMap<>();
        tidy(root, name, names);
        SvgLines.join(root);
        for (String needless : List.of("width", "height", "x", "y", "xmlns:xlink")) {
            root.removeAttribute(needless);
        }
        size(root, picture.height());
        root.setAttribute("role", "img");
        root.setAttribute("aria-labelledby", name + "-title " + name + "-desc");
        Node first = root.getFirstChild();
        root.insertBefore(named(document, "title", name + "-title", picture.title()), first);
        root.insertBefore(named(document, "desc", name + "-desc", picture.description()), first);
        return document;
    }

    /** Room for what stands below the chart, on a white ground of the same size. */
    static void size(Element root, int height) {
        root.setAttribute("viewBox", "0 0 " + Look.WIDTH + " " + height);
        for (Node child = root.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element element && element.getTagName().equals("rect")) {
                element.setAttribute("height", String.valueOf(height)); // the first one is the ground
                return;
            }
        }
        throw new IllegalStateException("the chart library drew no ground");
    }

    private static Element named(Document document, String tag, String id, String words) {
        Element element = document.createElementNS(SVG, tag);
        element.setAttribute("id", id);
        element.setTextContent(words);
        return element;
    }

    private static byte[] drawn(Picture picture) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            VectorGraphicsEncoder.saveVectorGraphic(picture.chart(), bytes, VectorGraphicsFormat.SVG);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /** Reads what the chart library wrote; the document type that it names would be fetched from the network otherwise. */
    private static Document parsed(byte[] svg) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
            factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_DTD, "");
            factory.setExpandEntityReferences(false);
            Document document = factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg));
            if (document.getDoctype() != null) {
                document.removeChild(document.getDoctype());
            }
            return document;
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new IllegalStateException("the chart library wrote SVG that cannot be read", e);
        }
    }

    private static void tidy(Element element, String name, Map<String, String> names) {
        NamedNodeMap attributes = element.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            Attr attribute = (Attr) attributes.item(i);
            String value = attribute.getValue();
            if (attribute.getName().equals("id")) {
                attribute.setValue(renamed(value, name, names));
            } else {
                String shortened = LONG_NUMBER.matcher(value).replaceAll(SvgText::rounded);
                attribute.setValue(REFERENCE
                        .matcher(shortened)
                        .replaceAll(match ->
                                Matcher.quoteReplacement("url(#" + renamed(match.group(1), name, names) + ")")));
            }
        }
        for (Node child = element.getFirstChild(); child != null; ) {
            Node next = child.getNextSibling();
            if (child instanceof Element inner) {
                tidy(inner, name, names);
            } else {
                element.removeChild(child); // white space between elements
            }
            child = next;
        }
    }

    private static String renamed(String id, String name, Map<String, String> names) {
        return names.computeIfAbsent(id, unused -> name + "-part" + (names.size() + 1));
    }

    private static String rounded(MatchResult number) {
        String text = Printed.figure("%.2f", Double.parseDouble(number.group()));
        return text.replaceAll("\\.?0+$", "").replaceAll("^-0$", "0");
    }

    private static String text(Document document) {
        try {
            Transformer transformer = TransformerFactory.newDefaultInstance().newTransformer();
            transformer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
            StringWriter text = new StringWriter();
            transformer.transform(new DOMSource(document), new StreamResult(text));
            return text.toString();
        } catch (TransformerException e) {
            throw new IllegalStateException("a picture could not be written as text", e);
        }
    }
}

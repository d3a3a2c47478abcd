package org.satline.program.pictures;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Reads a drawn picture back with the parser of the JDK. */
final class Svg {
    private final Document document;

    private Svg(Document document) {
        this.document = document;
    }

    static Svg of(String text) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return new Svg(factory.newDocumentBuilder().parse(new InputSource(new StringReader(text))));
    }

    List<Element> elements(String tag) {
        NodeList found = document.getElementsByTagNameNS("*", tag);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    List<String> ids() {
        return elements("*").stream()
                .map(element -> element.getAttribute("id"))
                .filter(id -> !id.isEmpty())
                .toList();
    }

    String words() {
        return String.join(
                " ", elements("text").stream().map(Element::getTextContent).toList());
    }
}

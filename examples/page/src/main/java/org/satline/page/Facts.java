package org.satline.page;

import java.util.List;

/** Names, each with its value. */
final class Facts {
    private final Node list = Node.of("dl", "facts");

    Node node() {
        return list;
    }

    /** A name with its value; nothing where the value is empty. */
    Facts add(String name, String value) {
        if (!value.isEmpty()) {
            row(name, Node.of("dd").text(value));
        }
        return this;
    }

    /** A number whose derivation opens when it is touched. */
    Facts add(Page page, String name, String value, List<String> steps) {
        row(name, Node.of("dd").add(Node.button("touch", value, () -> page.explain(steps))));
        return this;
    }

    private void row(String name, Node value) {
        list.add(Node.of("div").add(Node.of("dt").text(name), value));
    }
}

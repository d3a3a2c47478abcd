package org.satline.page;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/** One of a few words, each a button of its own: nothing is cut, however large the letters are. */
final class Choices {
    private Choices() {}

    /** A group under a name; the identifier of each button is that of the group, a hyphen and its word. */
    static Node of(
            String id,
            String name,
            List<String> words,
            UnaryOperator<String> texts,
            String now,
            Consumer<String> chosen) {
        Node group = Node.of("div", "units").set("role", "radiogroup").set("aria-label", name);
        List<Node> all = new ArrayList<>();
        for (String word : words) {
            Node button = Node.button("unit", texts.apply(word), () -> {});
            button.set("role", "radio")
                    .set("id", id + "-" + word)
                    .set("aria-checked", String.valueOf(word.equals(now)))
                    .on("click", () -> {
                        all.forEach(each -> each.set("aria-checked", String.valueOf(each == button)));
                        chosen.accept(word);
                    });
            all.add(button);
        }
        return group.add(all);
    }
}

package org.satline.page;

import java.util.ArrayList;
import java.util.List;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.refrigerant.UnknownRefrigerantException;

/** What a question is answered with. */
final class Control {
    private static final int MOST_NAMES = 6;

    private final Page page;
    private final Ask ask;

    Control(Page page, Ask ask) {
        this.page = page;
        this.ask = ask;
    }

    Node node() {
        if (ask.kind() instanceof Ask.Kind.Measure number) {
            return number(number);
        } else if (ask.kind() instanceof Ask.Kind.Choice choice) {
            return choices(choice.words());
        } else if (ask.kind() instanceof Ask.Kind.Flag) {
            return choices(List.of("yes", "no"));
        } else if (ask.kind() instanceof Ask.Kind.Gas) {
            return gas();
        }
        return line(ask.kind() instanceof Ask.Kind.Day ? "date" : "text");
    }

    private String answer() {
        return page.session().answer(ask.path());
    }

    private Node input(String type) {
        return Node.of("input")
                .set("type", type)
                .set("id", "input")
                .set("autocomplete", "off")
                .set("aria-labelledby", "heading")
                .set("aria-describedby", "reason problem");
    }

    private Node line(String type) {
        Node input = input(type).value(answer());
        return Node.of("div", "field")
                .add(input.on("input", () -> page.answer(ask, input.value().strip())));
    }

    private Node number(Ask.Kind.Measure number) {
        String answer = answer();
        int gap = answer.indexOf(' ');
        String[] unit = {gap < 0 ? usualUnit(number) : answer.substring(gap + 1)};
        Node input = input("text").set("inputmode", "decimal").value(gap < 0 ? answer : answer.substring(0, gap));
        Node units = Node.of("div", "units").set("role", "radiogroup").set("aria-label", page.text("unit"));
        Runnable typed = () -> {
            String digits = digits(input.value().strip());
            page.answer(ask, digits.isEmpty() ? "" : digits + " " + unit[0]);
        };
        List<Node> buttons = new ArrayList<>();
        for (String each : number.units()) {
            Node button = Node.of("button", "unit")
                    .set("type", "button")
                    .set("role", "radio")
                    .set("aria-checked", String.valueOf(each.equals(unit[0])))
                    .text(shown(each));
            button.on("click", () -> {
                unit[0] = each;
                Browser.remember("unit." + number.us() + "/" + number.si(), each);
                buttons.forEach(other -> other.set("aria-checked", String.valueOf(other == button)));
                typed.run();
            });
            buttons.add(button);
        }
        return Node.of("div", "field number").add(input.on("input", typed::run), units.add(buttons));
    }

    /** Spanish keyboards write a comma for the decimal mark; three digits behind it may be thousands, which the reader of the file refuses. */
    private String digits(String typed) {
        boolean decimal = page.look().language().equals("es") && typed.matches("-?\\d+,(\\d{1,2}|\\d{4,})");
        return decimal ? typed.replace(',', '.') : typed;
    }

    private String usualUnit(Ask.Kind.Measure number) {
        String last = Browser.remembered("unit." + number.us() + "/" + number.si());
        return number.units().contains(last) ? last : page.look().isSi() ? number.si() : number.us();
    }

    /** Degrees as people write them; a gauge says that it is one. */
    private static String shown(String unit) {
        return unit.replace("deg", "\u00b0").replace(" gauge", "");
    }

    private Node choices(List<String> words) {
        Node group = Node.of("div", "choices").set("role", "radiogroup").set("aria-labelledby", "heading");
        List<Node> all = new ArrayList<>();
        for (String word : words) {
            Node button = Node.of("button", "choice")
                    .set("type", "button")
                    .set("role", "radio")
                    .set("data-word", word)
                    .set("aria-checked", String.valueOf(word.equals(answer())))
                    .text(page.text("choice." + word));
            button.on("click", () -> {
                boolean again = word.equals(answer()) && !word.equals(Asks.NO_CYLINDER);
                page.answer(ask, again ? "" : word);
                all.forEach(each -> each.set("aria-checked", String.valueOf(each == button && !again)));
            });
            all.add(button);
        }
        return group.add(all);
    }

    private Node gas() {
        Node input = input("text").set("autocapitalize", "characters").value(answer());
        Node names = Node.of("div", "choices").set("aria-live", "polite");
        Runnable typed = () -> {
            String text = input.value().strip();
            page.answer(ask, text);
            names.cleared();
            for (String each : found(text)) {
                names.add(Node.button("choice", described(each), () -> {
                    input.value(each);
                    page.answer(ask, each);
                    names.cleared().add(chosen(each));
                }));
            }
        };
        if (!answer().isEmpty()) {
            names.add(chosen(answer()));
        }
        return Node.of("div", "field gas").add(input.on("input", typed::run), names);
    }

    private static Node chosen(String designation) {
        return Node.of("p", "chosen").text(described(designation));
    }

    private static String described(String designation) {
        try {
            Refrigerant gas = Catalogue.standard().find(designation);
            String group = gas.safetyGroup().map(each -> " \u00b7 " + each).orElse("");
            String name = gas.name().equals(gas.designation()) ? "" : " \u00b7 " + gas.name();
            return gas.designation() + group + name;
        } catch (IllegalArgumentException unknown) {
            return designation;
        }
    }

    /** Designations for what was typed: the one that it names, those that begin so, those that were nearly typed. */
    private static List<String> found(String text) {
        List<String> found = new ArrayList<>();
        if (text.isEmpty()) {
            return found;
        }
        try {
            found.add(Catalogue.standard().find(text).designation());
        } catch (UnknownRefrigerantException e) {
            found.addAll(e.suggestions());
        } catch (IllegalArgumentException e) {
            return found;
        }
        String plain = plain(text);
        Catalogue.standard().all().stream()
                .filter(each -> plain(each.designation()).contains(plain)
                        || each.otherNames().stream()
                                .anyMatch(name -> plain(name).startsWith(plain))
                        || plain(each.name()).startsWith(plain))
                .map(Refrigerant::designation)
                .filter(each -> !found.contains(each))
                .forEach(found::add);
        return found.subList(0, Math.min(MOST_NAMES, found.size()));
    }

    private static String plain(String name) {
        return name.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]", "");
    }
}

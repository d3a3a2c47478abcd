package org.satline.page;

import java.util.List;
import java.util.function.Consumer;

/** Language, units, look, the file, and what the page is not. */
final class MoreScreen {
    private static final String JSON = "application/json";

    private final Page page;

    MoreScreen(Page page) {
        this.page = page;
    }

    Node node() {
        Node screen = Node.of("section", "card").set("aria-labelledby", "heading");
        screen.add(Node.of("h2").set("id", "heading").set("tabindex", "-1").text(page.text("way.more")));
        choice(screen, "language", Look.LANGUAGES, page.look().language(), page.look()::language);
        choice(screen, "units", List.of("us", "si"), page.look().units(), page.look()::units);
        choice(screen, "look", Look.LOOKS, page.look().name(), page.look()::look);
        screen.add(Node.of("h3").text(page.text("others")));
        others(screen, "others.teach", Page.Screen.UNIT, Page.Screen.SHEET);
        others(screen, "others.check", Page.Screen.AUDIT);
        file(screen);
        screen.add(
                Node.of("h3").text(page.text("about")),
                Node.of("p").text(page.texts().wording().message("page.footer")),
                Node.of("p").text(page.texts().wording().message("page.footer.codes")),
                Node.of("p").text(page.text("about.device")));
        if (!page.look().language().equals("en")) {
            screen.add(Node.of("p", "note").text(page.texts().wording().message("page.footer.translated")));
        }
        return screen;
    }

    private void choice(Node screen, String name, List<String> words, String now, Consumer<String> chosen) {
        Consumer<String> taken = word -> {
            chosen.accept(word);
            page.restart();
            page.go(Page.Screen.MORE);
        };
        screen.add(
                Node.of("h3").text(page.text(name)),
                Choices.of(name, page.text(name), words, word -> page.text(name + "." + word), now, taken));
    }

    private void others(Node screen, String name, Page.Screen... behind) {
        Node row = Node.of("div", "steps");
        for (Page.Screen each : behind) {
            row.add(Node.button("step", page.text(each.key() + ".heading"), () -> page.go(each))
                    .set("id", "way-" + each.key()));
        }
        screen.add(Node.of("p", "where").text(page.text(name)), row);
    }

    private void file(Node screen) {
        Node problem = Node.of("p", "problem").set("role", "alert");
        Node input = Node.of("input")
                .set("type", "file")
                .set("accept", ".json," + JSON)
                .set("id", "file");
        input.on(
                "change",
                () -> Browser.read(input.element(), text -> {
                    try {
                        page.session().take(text);
                        page.ticks().clear();
                        page.restart();
                        page.go(Page.Screen.PLAN);
                    } catch (IllegalArgumentException e) {
                        problem.text(String.valueOf(e.getMessage()));
                    }
                }));
        screen.add(
                Node.of("h3").text(page.text("file")),
                Node.of("div", "steps")
                        .add(
                                Node.button(
                                                "step",
                                                page.text("file.out"),
                                                () -> Browser.hand(
                                                        "visit.json",
                                                        JSON,
                                                        PageJson.write(page.answer()
                                                                        .fields()) + "\n"))
                                        .set("id", "export"),
                                Node.button("step", page.text("print"), Browser::print)),
                Node.of("label", "file").text(page.text("file.in") + " ").add(input),
                problem,
                Node.button("step wide", page.text("begin"), () -> {
                            if (Browser.confirmed(page.text("begin.sure"))) {
                                page.session().begin();
                                page.ticks().clear();
                                page.restart();
                                page.go(Page.Screen.ASK);
                            }
                        })
                        .set("id", "begin"));
    }
}

package org.satline.page;

import java.util.List;

/** One question on a narrow display; beside it, where there is room, the list of all. */
final class AskScreen {
    private final Page page;

    AskScreen(Page page) {
        this.page = page;
    }

    Node node(String path) {
        List<Ask> arising = Asks.arising(page.session().fields());
        int at = 0;
        for (int i = 0; i < arising.size(); i++) {
            at = arising.get(i).path().equals(path) ? i : at;
        }
        return Node.of("div", "ask").add(question(arising, at), overview(arising, at));
    }

    private Node question(List<Ask> arising, int at) {
        Ask ask = arising.get(at);
        PageTexts texts = page.texts();
        Node card = Node.of("section", "card").set("aria-labelledby", "heading");
        String part = page.text("part." + ask.part().name().toLowerCase(java.util.Locale.ROOT));
        card.add(
                Node.of("p", "where").text(part + "  " + (at + 1) + "/" + arising.size()),
                Node.of("h2").set("id", "heading").set("tabindex", "-1").text(texts.question(ask.path())),
                Node.of("p", "reason").set("id", "reason").text(texts.reason(ask.path())),
                new Control(page, ask).node(),
                Node.of("p", "problem").set("id", "problem").set("role", "alert"));
        String before = at > 0 ? arising.get(at - 1).path() : "";
        Node back = Node.button("step back", page.text("back"), () -> page.ask(before));
        card.add(Node.of("div", "steps")
                .add(
                        before.isEmpty() ? back.set("disabled", "") : back,
                        Node.button("step next", page.text("next"), () -> forward(ask))
                                .set("id", "next")));
        Browser.later(() -> showProblem(page, ask.path()), 0);
        return card;
    }

    /** Which question follows is told by the answers as they are now. */
    private void forward(Ask ask) {
        List<Ask> arising = Asks.arising(page.session().fields());
        int at = arising.indexOf(arising.stream()
                .filter(each -> each.path().equals(ask.path()))
                .findFirst()
                .orElse(arising.get(0)));
        if (at + 1 < arising.size()) {
            page.ask(arising.get(at + 1).path());
        } else {
            page.go(Page.Screen.PLAN);
        }
    }

    private Node overview(List<Ask> arising, int at) {
        Node list = Node.of("ol", "overview");
        Ask.Part part = null;
        for (Ask each : arising) {
            if (each.part() != part) {
                part = each.part();
                list.add(Node.of("li", "part")
                        .text(page.text("part." + part.name().toLowerCase(java.util.Locale.ROOT))));
            }
            String answer = page.session().answer(each.path());
            String shown = each.kind() instanceof Ask.Kind.Choice || each.kind() instanceof Ask.Kind.Flag
                    ? word(answer)
                    : answer;
            Node entry = Node.button("entry", "", () -> page.ask(each.path()))
                    .add(
                            Node.of("span").text(page.texts().question(each.path())),
                            Node.of("b").text(shown.isEmpty() ? "\u2013" : shown));
            list.add(Node.of("li")
                    .add(each.path().equals(arising.get(at).path()) ? entry.set("aria-current", "step") : entry));
        }
        return Node.of("details", "all").add(Node.of("summary").text(page.text("overview")), list);
    }

    private String word(String answer) {
        return answer.isEmpty() ? "" : page.text("choice." + answer);
    }

    /** Says beside the question what is wrong with its answer. */
    static void showProblem(Page page, String path) {
        Answer answer = page.answer();
        boolean here =
                answer.field().equals(path) && !page.session().answer(path).isEmpty();
        Node problem = Node.known("problem").text(here ? page.text("refused") + " " : "");
        if (here) {
            // what the readers of the library say is English in every language
            problem.add(Node.of("span").set("lang", "en").text(answer.problem()));
        }
    }
}

package org.satline.page;

import java.util.List;

/** The page: the answer on top, one screen below it, the way to the others at the foot. For the one thread of a page. */
final class Page {
    /** The screens, in the order of their buttons. */
    enum Screen {
        ASK,
        PLAN,
        CYLINDER,
        CHART,
        WHY,
        MORE;

        String key() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    private static final int PAUSE_MS = 120;

    private final Session session = new Session();
    private final Look look = new Look();
    private final AnswerPanel panel = new AnswerPanel(this);
    private final Ticks ticks = new Ticks();
    private PageTexts texts;
    private Answer answer;
    private Screen screen = Screen.ASK;
    private String asked = "";
    private String touched = "";
    private int waiting;

    Page() {
        texts = new PageTexts(look.language(), look.isSi());
        answer = Answer.of(session);
        asked = firstOpen();
    }

    Session session() {
        return session;
    }

    Look look() {
        return look;
    }

    PageTexts texts() {
        return texts;
    }

    String text(String key) {
        return texts.of(key);
    }

    Answer answer() {
        return answer;
    }

    Ticks ticks() {
        return ticks;
    }

    /** The topic of the line that was touched last; its derivation stands open. */
    String touched() {
        return touched;
    }

    /** The first question without an answer, or the first of all. */
    private String firstOpen() {
        List<Ask> arising = Asks.arising(session.fields());
        return arising.stream()
                .map(Ask::path)
                .filter(path -> session.answer(path).isEmpty())
                .findFirst()
                .orElse(arising.get(0).path());
    }

    boolean isPlanning() {
        return screen == Screen.PLAN;
    }

    /** Shows everything anew. */
    void show() {
        Browser.dress(look.language(), look.name());
        panel.show();
        showScreen();
    }

    private void showScreen() {
        Node body = Node.known("screen").cleared();
        switch (screen) {
            case ASK -> body.add(new AskScreen(this).node(asked));
            case PLAN -> body.add(new PlanScreen(this).node());
            case CYLINDER -> body.add(new CylinderScreen(this).node());
            case CHART -> body.add(new ChartScreen(this).node());
            case WHY -> body.add(new WhyScreen(this).node());
            case MORE -> body.add(new MoreScreen(this).node());
        }
        Node foot = Node.known("ways").cleared().set("aria-label", text("ways"));
        for (Screen each : Screen.values()) {
            Node way = Node.button("way", "", () -> go(each))
                    .set("id", "way-" + each.key())
                    .add(Signs.of(each), Node.of("span").text(text("way." + each.key())));
            foot.add(each == screen ? way.set("aria-current", "page") : way);
        }
    }

    /** Goes to another screen and tells a screen reader so. */
    void go(Screen to) {
        boolean other = isPlanning() != (to == Screen.PLAN);
        screen = to;
        if (other) {
            panel.show();
        }
        showScreen();
        Browser.toTop();
        Node.known("heading").focus();
    }

    /** Goes to a question. */
    void ask(String path) {
        asked = path;
        go(Screen.ASK);
    }

    /** Goes to the derivation of what a line says. */
    void explain(String topic) {
        touched = topic;
        go(Screen.WHY);
    }

    /** Takes an answer; what follows from it is worked out once the typing pauses. */
    void answer(Ask ask, String text) {
        session.answer(ask, text, text("cylinder.this"));
        Node.known("answer").set("aria-busy", "true");
        Browser.never(waiting);
        waiting = Browser.later(this::workOut, PAUSE_MS);
    }

    /** Works out what follows and shows it on top. */
    void workOut() {
        double start = Browser.stopwatch();
        answer = Answer.of(session);
        panel.show();
        Browser.note("recompute", Browser.stopwatch() - start);
        if (screen == Screen.ASK) {
            AskScreen.showProblem(this, asked);
        }
    }

    /** After a change of everything: another visit, language or units. */
    void restart() {
        texts = new PageTexts(look.language(), look.isSi());
        answer = Answer.of(session);
        asked = firstOpen();
        show();
    }

    /** Begins the next readings on top of this visit. */
    void next() {
        session.next();
        ticks.clear();
        answer = Answer.of(session);
        asked = "readings.suctionPressure";
        panel.show();
        go(Screen.ASK);
    }
}

package org.satline.page;

import java.util.List;
import org.satline.cylinder.CylinderCheck;

/**
 * The page: the answer on top, one screen below it, the way to the others at the foot. For the one thread of a page.
 */
final class Page {
    /** The screens, in the order of their buttons; those behind {@code MORE} are about no visit. */
    enum Screen {
        ASK,
        PLAN,
        CYLINDER,
        CHART,
        WHY,
        MORE,
        UNIT,
        SHEET,
        AUDIT;

        /** Reached from another screen, not from the foot. */
        boolean isBehindMore() {
            return this == UNIT || this == SHEET || this == AUDIT;
        }

        String key() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    private static final int PAUSE_MS = 120;

    private final Session session = new Session();
    private final CylinderCheck.Memory checks = new CylinderCheck.Memory();
    private final Look look = new Look();
    private final AnswerPanel panel = new AnswerPanel(this);
    private final Ticks ticks = new Ticks();
    private final UnitScreen unit = new UnitScreen(this);
    private final SheetScreen sheet = new SheetScreen(this);
    private final AuditScreen audit = new AuditScreen(this);
    private PageTexts texts;
    private Answer answer;
    private Screen screen = Screen.ASK;
    private String asked = "";
    private List<String> touched = List.of();
    private int waiting;

    Page() {
        texts = new PageTexts(look.language(), look.isSi());
        answer = Answer.of(session, checks);
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

    /** The steps behind the number that was touched last; their derivations stand open. */
    List<String> touched() {
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

    /** Whether a screen is shown that is not about the visit. */
    boolean isAside() {
        return screen.isBehindMore();
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
            case UNIT -> body.add(unit.node());
            case SHEET -> body.add(sheet.node());
            case AUDIT -> body.add(audit.node());
        }
        Node foot = Node.known("ways").cleared().set("aria-label", text("ways"));
        Screen current = isAside() ? Screen.MORE : screen;
        for (Screen each : Screen.values()) {
            if (each.isBehindMore()) {
                continue;
            }
            Node way = Node.button("way", "", () -> go(each))
                    .set("id", "way-" + each.key())
                    .add(Signs.of(each), Node.of("span").text(text("way." + each.key())));
            foot.add(each == current ? way.set("aria-current", "page") : way);
        }
    }

    /** Goes to another screen and tells a screen reader so. */
    void go(Screen to) {
        boolean other = isPlanning() != (to == Screen.PLAN) || isAside() != to.isBehindMore();
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

    /** Goes to the derivation of a number. */
    void explain(List<String> steps) {
        touched = steps;
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
        answer = Answer.of(session, checks);
        panel.show();
        Browser.note("recompute", Browser.stopwatch() - start);
        if (screen == Screen.ASK) {
            AskScreen.showProblem(this, asked);
        }
    }

    /** After a change of everything: another visit, language or units. */
    void restart() {
        texts = new PageTexts(look.language(), look.isSi());
        answer = Answer.of(session, checks);
        asked = firstOpen();
        show();
    }

    /** Begins the next readings on top of this visit. */
    void next() {
        session.next();
        ticks.clear();
        answer = Answer.of(session, checks);
        asked = "readings.suctionPressure";
        panel.show();
        go(Screen.ASK);
    }
}

package org.satline.page;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.satline.charge.belief.FaultLikelihood;
import org.satline.simulation.SteadyState;
import org.satline.visit.VisitReport;
import org.satline.wording.VisitLines;
import org.satline.wording.Wording;

/** What would you do? An answer to choose, held against what the library says of the same readings. */
final class UnitQuestion {
    private static final int MOST_FAULTS = 3;
    private static final List<VisitLines.Topic> SHOWN =
            List.of(VisitLines.Topic.DANGER, VisitLines.Topic.ACTION, VisitLines.Topic.REASON, VisitLines.Topic.LEVEL);

    private final Page page;
    private final SimulatedUnits units;
    private final Supplier<UnitSetting> setting;
    private final Supplier<Optional<SteadyState>> state;

    UnitQuestion(
            Page page, SimulatedUnits units, Supplier<UnitSetting> setting, Supplier<Optional<SteadyState>> state) {
        this.page = page;
        this.units = units;
        this.setting = setting;
        this.state = state;
    }

    /** Puts the question, and once it is answered the comparison below it. */
    void put(Node under, boolean hidden, Node.Handler reveal) {
        Node choices = Node.of("div", "choices");
        Node outcome = Node.of("div", "outcome").set("role", "status").set("id", "outcome");
        for (Reply reply : Reply.values()) {
            choices.add(Node.button("choice", page.text(reply.key()), () -> {
                        outcome.cleared();
                        state.get().ifPresent(each -> compare(outcome, reply, each, hidden, reveal));
                        outcome.reach();
                    })
                    .set("data-word", reply.key()));
        }
        under.cleared().add(Node.of("h3").text(page.text("unit.question")), choices, outcome);
    }

    private void compare(Node outcome, Reply reply, SteadyState each, boolean hidden, Node.Handler reveal) {
        VisitReport report = units.report(setting.get(), each);
        Reply ours = Reply.of(report);
        Wording wording = page.texts().wording();
        outcome.add(
                Node.of("p", reply == ours ? "verdict same" : "verdict other")
                        .text(page.text(reply == ours ? "unit.same" : "unit.other")),
                Node.of("dl", "lines").add(row(page.text("unit.yours"), page.text(reply.key()))),
                Node.of("h3").text(page.text("unit.library")),
                Node.of("p", "where").text(page.text(ours.key())));
        Node lines = Node.of("dl", "lines");
        for (VisitLines.Line line : VisitLines.of(report, wording).top()) {
            if (SHOWN.contains(line.topic())) {
                Node row = row(line.name(), line.text());
                lines.add(line.topic() == VisitLines.Topic.DANGER ? row.set("class", "line danger") : row);
            }
        }
        Node fits = Node.of("ul");
        List<FaultLikelihood> faults = report.judgement().evidence().faults();
        for (FaultLikelihood fault : faults.subList(0, Math.min(MOST_FAULTS, faults.size()))) {
            fits.add(Node.of("li")
                    .text(wording.name(fault.fault()) + ": " + wording.numbers().percent(fault.probability())));
        }
        outcome.add(
                lines,
                Node.of("h3").text(page.text("unit.fits")),
                fits,
                Node.of("h3").text(page.text("unit.set")));
        outcome.add(wasSet());
        outcome.add(Node.of("h3").text(wording.message("page.steps")));
        report.steps().forEach(step -> outcome.add(new Derivation(wording, step).node(false)));
        if (hidden) {
            outcome.add(
                    Node.button("step wide", page.text("unit.reveal"), reveal).set("id", "reveal"));
        }
    }

    private Node wasSet() {
        List<Knob> changed = setting.get().changed();
        if (changed.isEmpty()) {
            return Node.of("p").text(page.text("unit.sound"));
        }
        Node list = Node.of("ul");
        changed.forEach(knob -> list.add(Node.of("li")
                .text(page.text(knob.key()) + ": "
                        + knob.printed(
                                setting.get().at(knob), page.texts().wording().numbers()))));
        return list;
    }

    private static Node row(String name, String text) {
        return Node.of("div", "line")
                .add(Node.of("dt").text(name), Node.of("dd").text(text));
    }
}

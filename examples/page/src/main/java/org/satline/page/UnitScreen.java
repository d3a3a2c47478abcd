package org.satline.page;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.satline.charge.margin.MeteringDevice;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Pressure;
import org.satline.quantity.Quantity;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.simulation.SteadyState;
import org.satline.wording.Wording;

/** For teachers: a simulated unit with sliders, its gauges, and what one would do. For the one thread of a page. */
final class UnitScreen {
    private static final int MOST_DRAWS = 40;

    private final Page page;
    private final SimulatedUnits units = new SimulatedUnits(PageJson.read(Session.COMMON_KIT));
    private final Node instruments = Node.of("div", "instruments").set("id", "instruments");
    private final Node work = Node.of("div").set("id", "unit");
    private UnitSetting setting = UnitSetting.usual("R-410A", MeteringDevice.EXPANSION_VALVE);
    private Optional<SteadyState> state = Optional.empty();
    private boolean hidden;
    private int number = 1;

    UnitScreen(Page page) {
        this.page = page;
    }

    Node node() {
        Node screen = Node.of("section", "card").set("aria-labelledby", "heading");
        screen.add(
                Node.of("h2").set("id", "heading").set("tabindex", "-1").text(page.text("unit.heading")),
                Node.of("p", "note").text(page.text("unit.model")),
                refrigerants(),
                devices(),
                work.cleared());
        Browser.later(this::begin, 0);
        return screen;
    }

    /** A unit of another refrigerant is prepared first, which takes a moment: that is said before. */
    private void begin() {
        work.cleared().add(Node.of("p").set("role", "status").text(page.text("unit.making")));
        Browser.later(this::show, 30);
    }

    private Node refrigerants() {
        Node select = Node.of("select").set("id", "gas");
        UnitSetting.REFRIGERANTS.forEach(each -> select.add(option(each, each, each.equals(setting.designation()))));
        return labelled(page.text("unit.refrigerant"), select.on("change", () -> {
            change(UnitSetting.usual(select.value(), setting.metering()));
        }));
    }

    private Node devices() {
        List<String> words =
                Stream.of(MeteringDevice.values()).map(MeteringDevice::label).toList();
        return Choices.of(
                "metering",
                page.text("unit.metering"),
                words,
                word -> page.text("choice." + word),
                setting.metering().label(),
                word -> change(UnitSetting.usual(setting.designation(), MeteringDevice.ofLabel(word))));
    }

    private void change(UnitSetting other) {
        setting = other;
        hidden = false;
        begin();
    }

    static Node labelled(String name, Node control) {
        return Node.of("label", "named").add(Node.of("span").text(name), control);
    }

    static Node option(String value, String text, boolean chosen) {
        Node option = Node.of("option").set("value", value).text(text);
        return chosen ? option.set("selected", "") : option;
    }

    private void show() {
        SaturationCurve curve = SaturationCurves.of(Catalogue.standard().find(setting.designation()));
        Dials dials = new Dials(page.texts(), page.look().isSi(), curve);
        Node readings = Node.of("div").set("id", "unit-readings");
        Node problem = Node.of("p", "stopped").set("role", "status");
        Runnable turn = () -> {
            double start = Browser.stopwatch();
            state = units.state(setting);
            dials.show(state);
            readings.cleared().add(state.map(this::read).orElse(null));
            problem.text(state.isPresent() ? "" : page.text("unit.stopped"));
            Browser.note("unit", Browser.stopwatch() - start);
        };
        Node question = Node.of("div").set("id", "question");
        work.cleared().add(instruments.cleared().add(dials.node()), problem, readings);
        if (hidden) {
            work.add(Node.of("p", "where").text(page.text("unit.number") + " " + number));
        } else {
            work.add(knobs(turn));
        }
        work.add(question);
        turn.run();
        new UnitQuestion(page, units, () -> setting, () -> state).put(question, hidden, this::reveal);
        work.add(drawing());
    }

    private void reveal() {
        hidden = false;
        show();
    }

    private Node read(SteadyState each) {
        Wording wording = page.texts().wording();
        Facts facts = new Facts();
        fact(facts, page.texts().question("readings.suctionPressure"), gauge(each.suctionPressure()));
        fact(facts, page.texts().question("readings.suctionLine"), each.suctionLine());
        fact(facts, page.texts().question("readings.liquidPressure"), gauge(each.liquidPressure()));
        fact(facts, page.texts().question("readings.liquidLine"), each.liquidLine());
        if (!hidden) {
            fact(facts, wording.message("charge.criterion.superheat"), each.superheat());
            fact(facts, wording.message("charge.criterion.subcooling"), each.subcooling());
        }
        fact(
                facts,
                page.texts().question("readings.returnDryBulb"),
                setting.air().returnDryBulb());
        fact(
                facts,
                page.texts().question("readings.returnWetBulb"),
                setting.air().returnWetBulb());
        fact(facts, page.texts().question("readings.supplyDryBulb"), each.supplyDryBulb());
        fact(facts, page.texts().question("readings.outdoorAir"), setting.air().outdoor());
        units.target(setting)
                .ifPresent(target ->
                        fact(facts, page.texts().question(SimulatedUnits.targetField(setting.metering())), target));
        return facts.node();
    }

    private static GaugePressure gauge(Pressure pressure) {
        return GaugePressure.ofPascals(
                pressure.pascals() - Atmosphere.standard().pressure().pascals());
    }

    private void fact(Facts facts, String name, Quantity<?> value) {
        facts.add(name, page.texts().wording().numbers().print(value));
    }

    private Node knobs(Runnable turn) {
        Node knobs = Node.of("div", "knobs");
        knobs.add(Node.of("h3").text(page.text("unit.sliders")));
        for (Knob knob : Knob.values()) {
            knobs.add(slider(knob, turn));
        }
        return knobs.add(Node.button("step wide", page.text("unit.usual"), () -> {
                    setting = UnitSetting.usual(setting.designation(), setting.metering());
                    show();
                })
                .set("id", "usual"));
    }

    private Node slider(Knob knob, Runnable turn) {
        String id = knob.key().replace('.', '-');
        Node shown = Node.of("output").set("for", id);
        Node input = Node.of("input")
                .set("type", "range")
                .set("id", id)
                .set("min", String.valueOf(knob.least))
                .set("max", String.valueOf(knob.most))
                .set("step", String.valueOf(knob.step))
                .value(String.valueOf((int) setting.at(knob)));
        Runnable print = () -> {
            String text = knob.printed(setting.at(knob), page.texts().wording().numbers());
            shown.text(text);
            input.set("aria-valuetext", text);
        };
        print.run();
        input.on("input", () -> {
            setting = setting.with(knob, Double.parseDouble(input.value()));
            print.run();
            turn.run();
        });
        return Node.of("div", "knob").add(Node.of("label").set("for", id).text(page.text(knob.key())), shown, input);
    }

    /** A unit whose setting only its number knows: the same for the whole class. */
    private Node drawing() {
        Node input = Node.of("input")
                .set("type", "text")
                .set("inputmode", "numeric")
                .set("id", "unit-number")
                .value(String.valueOf(hidden ? number + 1 : number));
        Node problem = Node.of("p", "problem").set("role", "alert");
        Node draw = Node.button("step next", page.text("unit.draw"), () -> {
            String text = input.value().strip();
            if (!text.matches("\\d{1,6}")) {
                problem.text(page.text("unit.numberRefused"));
                return;
            }
            number = Integer.parseInt(text);
            draw();
        });
        return Node.of("div")
                .add(
                        Node.of("h3").text(page.text("unit.hidden")),
                        Node.of("p").text(page.text("unit.hiddenWhy")),
                        Node.of("div", "steps").add(labelled(page.text("unit.number"), input), draw.set("id", "draw")),
                        problem);
    }

    private void draw() {
        for (int i = 0; i < MOST_DRAWS; i++) {
            UnitSetting drawn = setting.drawn(number, i);
            Optional<SteadyState> there = units.state(drawn);
            if (there.isPresent()) {
                setting = drawn;
                hidden = true;
                show();
                Browser.toTop();
                return;
            }
        }
        throw new IllegalStateException("no unit of number " + number + " runs; take other limits of the draw");
    }
}

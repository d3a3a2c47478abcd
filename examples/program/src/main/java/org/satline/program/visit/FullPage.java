package org.satline.program.visit;

import java.util.List;
import org.satline.charge.Gate;
import org.satline.charge.Judgement;
import org.satline.charge.belief.FaultLikelihood;
import org.satline.charge.margin.LineMargin;
import org.satline.equation.PairInteraction;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Subject;
import org.satline.program.page.Block;
import org.satline.program.page.Page;
import org.satline.quantity.Quantity;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Refrigerant;
import org.satline.safety.Caution;
import org.satline.saturation.PropertySource;
import org.satline.transfer.Flow;
import org.satline.visit.PressureReadout;
import org.satline.visit.ServicedSystem;
import org.satline.visit.VisitReport;
import org.satline.wording.Wording;

/** Everything about a visit beyond the lines that matter. */
final class FullPage {
    private static final int MOST_FAULTS = 4;

    private final VisitReport report;
    private final Wording wording;
    private final Detail detail;
    private final Page page;

    FullPage(VisitReport report, Wording wording, Detail detail, Page page) {
        this.report = report;
        this.wording = wording;
        this.detail = detail;
        this.page = page;
    }

    void write() {
        site();
        pressures();
        margins();
        page.add(new Block.Place(Block.Spot.SYSTEM));
        charge();
        report.cylinders().forEach(each -> new CylinderSection(wording, detail, page).write(each));
        flows();
        page.add(new Block.Place(Block.Spot.CYLINDER));
        findings();
        cautions();
        if (detail == Detail.EXPLAINED) {
            ExplainPage.add(report.steps(), wording, page);
        }
    }

    private void heading(String key) {
        page.heading(wording.message(key));
    }

    private void row(String key, String text) {
        page.row(key.isEmpty() ? "" : wording.message(key), text);
    }

    private String value(Quantity<?> quantity) {
        return wording.numbers().print(quantity);
    }

    private void site() {
        ServicedSystem system = report.visit().system();
        heading("page.site");
        report.visit().date().ifPresent(date -> row("page.date", date.toString()));
        row(
                "page.place",
                join(
                        report.visit().site().name(),
                        value(report.visit().site().atmosphere().pressure())));
        row("page.system", join(system.name(), named(system.refrigerant()), wording.name(system.metering())));
        system.fullCharge().ifPresent(mass -> row("page.fullCharge", value(mass)));
        PropertySource source = report.properties();
        row("page.properties", source.engine().words() + "; " + source.equations());
        row("page.data", source.refrigerant().dataVersion());
        source.warnings().forEach(warning -> row("page.warning", wording.of(warning)));
        for (PairInteraction pair : source.interactions()) {
            row(
                    "page.pair",
                    pair.first() + " + " + pair.second() + ": " + pair.status().word() + " (" + pair.source() + ")");
        }
    }

    private static String join(String... parts) {
        return String.join(
                "; ", List.of(parts).stream().filter(each -> !each.isBlank()).toList());
    }

    private String named(Refrigerant refrigerant) {
        return refrigerant
                .safetyGroup()
                .map(group -> wording.message(
                        "page.refrigerant",
                        Figure.of("refrigerant", refrigerant.designation()),
                        Figure.of("group", group.toString())))
                .orElse(refrigerant.designation());
    }

    private void pressures() {
        if (report.pressures().isEmpty()) {
            return;
        }
        heading("page.pressures");
        for (PressureReadout each : report.pressures()) {
            page.row(
                    wording.of(Subject.reading(each.place().path())),
                    wording.message(
                            "page.pressure",
                            Figure.of("gauge", each.gauge()),
                            Figure.of("absolute", each.absolute()),
                            Figure.of("bubble", each.bubble()),
                            Figure.of("dew", each.dew())));
        }
    }

    private void margins() {
        heading("page.margins");
        report.judgement().evidence().margins().superheat().ifPresent(this::margin);
        report.judgement().evidence().margins().subcooling().ifPresent(this::margin);
    }

    private void margin(LineMargin margin) {
        page.row(
                wording.name(margin.criterion()),
                wording.numbers()
                        .within(
                                margin.value(),
                                TemperatureDifference.ofKelvins(margin.budget().expanded())));
    }

    private void charge() {
        Judgement judgement = report.judgement();
        heading("page.charge");
        judgement.evidence().findings().forEach(each -> row("", wording.of(each)));
        report.estimate()
                .ifPresent(estimate -> row(
                        "page.estimate",
                        wording.message(
                                "page.estimated",
                                Figure.of("fraction", estimate.fraction(), "1"),
                                Figure.of("doubt", 2 * estimate.standardUncertainty(), "1"))));
        report.longerLine().ifPresent(line -> row("page.longerLine", value(line.mass())));
        for (Gate gate : judgement.evidence().gates()) {
            page.row(wording.name(gate.state()), wording.of(gate));
        }
        for (FaultLikelihood fault :
                judgement.evidence().faults().stream().limit(MOST_FAULTS).toList()) {
            row(
                    "page.fault",
                    wording.message(
                            "page.faultChance",
                            Figure.of("fault", wording.name(fault.fault())),
                            Figure.of("chance", fault.probability(), "1")));
        }
    }

    private void flows() {
        if (report.flows().isEmpty()) {
            return;
        }
        heading("page.flows");
        for (Flow flow : report.flows()) {
            if (flow instanceof Flow.OneWay way) {
                page.item(wording.message(
                        "page.oneWay",
                        Figure.of("medium", wording.name(way.medium())),
                        Figure.of("from", wording.name(way.from().kind())),
                        Figure.of("fromPressure", way.from().pressure().value()),
                        Figure.of("to", wording.name(way.to().kind())),
                        Figure.of("toPressure", way.to().pressure().value()),
                        Figure.of("driving", way.driving()),
                        Figure.of("doubt", way.expandedUncertainty())));
            } else if (flow instanceof Flow.TooCloseToCall close) {
                page.item(wording.message(
                        "page.tooClose",
                        Figure.of("first", wording.name(close.first().kind())),
                        Figure.of("second", wording.name(close.second().kind())),
                        Figure.of("difference", close.difference()),
                        Figure.of("doubt", close.expandedUncertainty())));
            }
        }
    }

    private void findings() {
        if (!report.findings().isEmpty()) {
            heading("page.findings");
        }
        for (Finding each : report.findings()) {
            page.row(wording.name(each.severity()), wording.of(each) + " [" + each.basis() + "]");
        }
    }

    private void cautions() {
        heading("page.cautions");
        for (Caution caution : report.cautions()) {
            page.item(wording.of(caution) + " [" + caution.basis() + "]");
        }
    }
}

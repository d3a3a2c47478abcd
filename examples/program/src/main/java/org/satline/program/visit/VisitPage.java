package org.satline.program.visit;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.satline.charge.LineMargin;
import org.satline.equation.PairInteraction;
import org.satline.measurement.ReportedValue;
import org.satline.program.page.Block;
import org.satline.program.page.Page;
import org.satline.program.page.PageText;
import org.satline.program.page.Printed;
import org.satline.refrigerant.Refrigerant;
import org.satline.safety.Caution;
import org.satline.transfer.Flow;
import org.satline.transfer.FlowWarning;
import org.satline.visit.PressureReadout;
import org.satline.visit.PropertySource;
import org.satline.visit.ServicedSystem;
import org.satline.visit.VisitReport;

/** Lays out the report of a visit as one page. */
public final class VisitPage {
    private static final double FAHRENHEIT_DEGREES_PER_KELVIN = 1.8;

    private final VisitReport report;
    private final Page page;

    private VisitPage(VisitReport report, Page page) {
        this.report = report;
        this.page = page;
    }

    /**
     * Lays out a report.
     *
     * @param report the report
     * @return the page, lines of at most about 100 characters
     */
    public static String of(VisitReport report) {
        return PageText.of(blocks(report));
    }

    /**
     * Lays out a report as blocks.
     *
     * @param report the report
     * @return the page, with the places for its pictures
     */
    public static List<Block> blocks(VisitReport report) {
        Page page = new Page();
        new VisitPage(report, page).write();
        return page.blocks();
    }

    private void write() {
        head();
        pressures();
        margins();
        page.add(new Block.Place(Block.Spot.SYSTEM));
        new ChargeSection(page).write(report);
        CylinderSection cylinder = new CylinderSection(page);
        cylinder.room(report);
        flows();
        report.hookUp().ifPresent(new HookUpSection(page, report)::write);
        page.add(new Block.Place(Block.Spot.CYLINDER));
        cylinder.rules(report);
        cautions();
        page.add(new Block.Gap());
        page.line("This page supports licensed practice and does not replace it.");
        page.line("Local codes and the maker's instructions come first.");
    }

    private void head() {
        ServicedSystem system = report.input().system();
        page.title(report.input().title());
        report.input().date().ifPresent(date -> page.row("date", date.toString()));
        page.row(
                "site",
                report.input().site().name() + "; atmosphere "
                        + report.input().site().atmosphere().description());
        page.row(
                "system",
                system.name() + "; " + named(system.refrigerant()) + "; "
                        + system.metering().label().replace('-', ' ')
                        + system.fullCharge()
                                .map(mass -> "; full charge " + Printed.both(mass))
                                .orElse(""));
        PropertySource source = report.properties();
        page.row("properties", source.engine().words() + "; " + source.equations());
        page.row("", "data " + source.refrigerant().dataVersion());
        source.warnings().forEach(warning -> page.row("warning", warning));
        for (PairInteraction pair : source.interactions()) {
            page.row(
                    "",
                    "pair " + pair.first() + " + " + pair.second() + ": "
                            + pair.status().word() + " (" + pair.source() + ")");
        }
    }

    private static String named(Refrigerant refrigerant) {
        return refrigerant.designation()
                + refrigerant
                        .safetyGroup()
                        .map(group -> ", safety group " + group)
                        .orElse("");
    }

    private void pressures() {
        page.heading("Pressures and saturation temperatures");
        for (PressureReadout readout : report.pressures()) {
            page.row(
                    readout.name(),
                    Printed.figure("%.1f psig", readout.gauge().psig()) + ", absolute "
                            + Printed.both(readout.absolute()));
            page.row(
                    "",
                    "bubble point " + Printed.both(readout.bubble()) + ", dew point " + Printed.both(readout.dew()));
        }
    }

    private void margins() {
        page.heading("Superheat and subcooling");
        report.margins()
                .superheat()
                .ifPresent(margin -> page.row("superheat", margin(margin) + " above the dew point"));
        report.margins()
                .subcooling()
                .ifPresent(margin -> page.row("subcooling", margin(margin) + " below the bubble point"));
        if (report.margins().superheat().isEmpty()) {
            page.row("superheat", "not known: suction pressure and suction line temperature are needed");
        }
        if (report.margins().subcooling().isEmpty()) {
            page.row("subcooling", "not known: liquid pressure and liquid line temperature are needed");
        }
    }

    private static String margin(LineMargin margin) {
        double factor = FAHRENHEIT_DEGREES_PER_KELVIN;
        return Printed.figure(ReportedValue.of(
                        margin.value().kelvins() * factor, margin.standardUncertaintyK() * factor, "degF"))
                + " (" + Printed.figure(margin.reported()) + "; k = 2)";
    }

    private void flows() {
        if (report.flows().isEmpty()) {
            return;
        }
        page.heading("Which way it would flow");
        if (report.mustNotConnect()) {
            page.item("DO NOT CONNECT THE CYLINDER: this is only what an open valve would do");
        } else if (!report.callsForMoving()) {
            page.item("NOTHING IS TO BE MOVED by these readings: this is only what an open valve would do");
        } else if (!report.movesNow()) {
            page.item(
                    "NOTHING IS TO BE MOVED with this cylinder as things stand: this is only what an open valve would do");
        }
        for (Flow flow : report.flows()) {
            if (flow instanceof Flow.OneWay way) {
                page.item(way.medium().toString().toLowerCase(Locale.ROOT) + " from the "
                        + way.from().kind() + " at "
                        + Printed.both(way.from().pressure()) + " to the "
                        + way.to().kind() + " at "
                        + Printed.both(way.to().pressure())
                        + ", driven by " + Printed.both(way.driving())
                        + Printed.figure(
                                " +/- %.1f psi", way.expandedUncertainty().psi())
                        + warnings(way));
            } else if (flow instanceof Flow.TooCloseToCall close) {
                page.item("between the " + close.first().kind() + " and the "
                        + close.second().kind() + ": too close to call, " + Printed.both(close.difference())
                        + Printed.figure(
                                " +/- %.1f psi", close.expandedUncertainty().psi()));
            }
        }
    }

    private static String warnings(Flow.OneWay way) {
        return way.warnings().isEmpty()
                ? ""
                : ". WARNING: "
                        + way.warnings().stream().map(FlowWarning::advice).collect(Collectors.joining("; "));
    }

    private void cautions() {
        page.heading("Cautions");
        for (Caution caution : report.cautions()) {
            page.item(caution.text() + " [" + caution.basis() + "]");
        }
    }
}

package org.satline.examples.visit;

import java.util.Locale;
import java.util.stream.Collectors;
import org.satline.charge.LineMargin;
import org.satline.equation.PairInteraction;
import org.satline.examples.file.Sheet;
import org.satline.examples.file.TextSheet;
import org.satline.measurement.ReportedValue;
import org.satline.quantity.UnitSystem;
import org.satline.refrigerant.Refrigerant;
import org.satline.safety.Caution;
import org.satline.transfer.Flow;
import org.satline.transfer.FlowWarning;
import org.satline.visit.PressureReadout;
import org.satline.visit.PropertySource;
import org.satline.visit.ServicedSystem;
import org.satline.visit.VisitReport;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/** Lays out the report of a visit as one page, of plain text or on another sheet. */
public final class VisitPage {
    private static final double FAHRENHEIT_DEGREES_PER_KELVIN = 1.8;

    private final VisitReport report;
    private final Sheet sheet;

    private VisitPage(VisitReport report, Sheet sheet) {
        this.report = report;
        this.sheet = sheet;
    }

    /**
     * Lays out a report.
     *
     * @param report the report
     * @return the page, lines of at most about 100 characters
     */
    public static String of(VisitReport report) {
        TextSheet sheet = new TextSheet();
        write(report, sheet);
        return sheet.toString();
    }

    /**
     * Writes a report on a sheet.
     *
     * @param report the report
     * @param sheet receives it
     */
    public static void write(VisitReport report, Sheet sheet) {
        new VisitPage(report, sheet).write();
    }

    private void write() {
        head();
        pressures();
        margins();
        sheet.spot(Sheet.Spot.SYSTEM);
        new ChargeSection(sheet).write(report);
        CylinderSection cylinder = new CylinderSection(sheet);
        cylinder.room(report);
        flows();
        report.hookUp().ifPresent(new HookUpSection(sheet, report)::write);
        sheet.spot(Sheet.Spot.CYLINDER);
        cylinder.rules(report);
        cautions();
        sheet.line("");
        sheet.line("This page supports licensed practice and does not replace it.");
        sheet.line("Local codes and the maker's instructions come first.");
    }

    private void head() {
        ServicedSystem system = report.input().system();
        sheet.title(report.input().title());
        report.input().date().ifPresent(date -> sheet.row("date", date.toString()));
        sheet.row(
                "site",
                report.input().site().name() + "; atmosphere "
                        + report.input().site().atmosphere().description());
        sheet.row(
                "system",
                system.name() + "; " + named(system.refrigerant()) + "; "
                        + system.metering().label().replace('-', ' ')
                        + system.fullCharge()
                                .map(mass -> "; full charge " + Both.of(mass))
                                .orElse(""));
        PropertySource source = report.properties();
        sheet.row("properties", source.engine().words() + "; " + source.equations());
        sheet.row("", "data " + source.refrigerant().dataVersion());
        source.warnings().forEach(warning -> sheet.row("warning", warning));
        for (PairInteraction pair : source.interactions()) {
            sheet.row(
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
        sheet.heading("Pressures and saturation temperatures");
        for (PressureReadout readout : report.pressures()) {
            sheet.row(
                    readout.name(),
                    Both.figure("%.1f psig", readout.gauge().psig()) + ", absolute " + Both.of(readout.absolute()));
            sheet.row("", "bubble point " + Both.of(readout.bubble()) + ", dew point " + Both.of(readout.dew()));
        }
    }

    private void margins() {
        sheet.heading("Superheat and subcooling");
        report.margins()
                .superheat()
                .ifPresent(margin -> sheet.row("superheat", margin(margin) + " above the dew point"));
        report.margins()
                .subcooling()
                .ifPresent(margin -> sheet.row("subcooling", margin(margin) + " below the bubble point"));
        if (report.margins().superheat().isEmpty()) {
            sheet.row("superheat", "not known: suction pressure and suction line temperature are needed");
        }
        if (report.margins().subcooling().isEmpty()) {
            sheet.row("subcooling", "not known: liquid pressure and liquid line temperature are needed");
        }
    }

    private static String margin(LineMargin margin) {
        double factor = FAHRENHEIT_DEGREES_PER_KELVIN;
        return figure(ReportedValue.of(
                        margin.value().kelvins() * factor, margin.standardUncertaintyK() * factor, "degF"))
                + " (" + figure(margin.reported()) + "; k = 2)";
    }

    private static String figure(ReportedValue value) {
        return value.value().toPlainString() + " +/- " + value.expanded().toPlainString() + " " + value.unit();
    }

    private void flows() {
        if (report.flows().isEmpty()) {
            return;
        }
        sheet.heading("Which way it would flow");
        if (report.mustNotConnect()) {
            sheet.item("DO NOT CONNECT THE CYLINDER: this is only what an open valve would do");
        } else if (!report.callsForMoving()) {
            sheet.item("NOTHING IS TO BE MOVED by these readings: this is only what an open valve would do");
        } else if (!report.movesNow()) {
            sheet.item(
                    "NOTHING IS TO BE MOVED with this cylinder as things stand: this is only what an open valve would do");
        }
        for (Flow flow : report.flows()) {
            if (flow instanceof Flow.OneWay way) {
                sheet.item(way.medium().toString().toLowerCase(Locale.ROOT) + " from the "
                        + way.from().kind() + " at "
                        + Both.of(way.from().pressure()) + " to the " + way.to().kind() + " at "
                        + Both.of(way.to().pressure())
                        + ", driven by " + Both.of(way.driving())
                        + Both.figure(" +/- %.1f psi", way.expandedUncertainty().psi())
                        + warnings(way));
            } else if (flow instanceof Flow.TooCloseToCall close) {
                sheet.item("between the " + close.first().kind() + " and the "
                        + close.second().kind() + ": too close to call, " + Both.of(close.difference())
                        + Both.figure(
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
        sheet.heading("Cautions");
        Wording words = Wording.of(Language.ENGLISH, UnitSystem.US);
        for (Caution caution : report.cautions()) {
            sheet.item(words.of(caution) + " [" + caution.basis() + "]");
        }
    }
}

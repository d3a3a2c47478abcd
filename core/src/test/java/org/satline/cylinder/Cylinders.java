package org.satline.cylinder;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.satline.filling.CylinderSpecification;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillQuestion;
import org.satline.filling.FillRules;
import org.satline.filling.Provenance;
import org.satline.filling.Samples;
import org.satline.filling.Stamp;
import org.satline.measurement.Reading;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Catalogue;

/**
 * One fixture and its alterations: the recovery cylinder of a sailing club, 30 lb of water, tare 18 lb, 12 lb of recovered R-22 at 80 degF,
 * weighed by a scale of 0.05 lb. Mutable; for one test.
 */
final class Cylinders {
    static final LocalDate TODAY = LocalDate.of(2030, 5, 1);
    static final Atmosphere SITE = Atmosphere.standard();
    private static final Mass SCALE = Mass.ofPounds(0.03);

    private Role role = Role.RECEIVER;
    private Valve valve = Valve.VAPOUR;
    private CylinderStamps stamps = CylinderStamps.of(Mass.ofPounds(18), Mass.ofPounds(30))
            .with(Stamp.SPECIFICATION, CylinderSpecification.parse("DOT-4BA400"))
            .with(Stamp.RETEST_DUE, TODAY.plusYears(1));
    private Optional<String> label = Optional.of("R-22");
    private Optional<Provenance> provenance = Optional.of(Provenance.RECOVERED);
    private double fahrenheit = 80;
    private Optional<Pressure> pressure = Optional.of(psig(143.7));
    private boolean atRest = true;
    private Optional<Weighing> weighing = Optional.of(gross(30));
    private Temperature warmest = FillQuestion.USUAL_MAXIMUM;
    private String rules = "us";
    private String system = "R-22";
    private Optional<LocalDate> day = Optional.of(TODAY);

    private Cylinders() {}

    static Cylinders receiver() {
        return new Cylinders();
    }

    /** A disposable of 30 lb of water, tare 6 lb, 24 lb of new R-22, the hose at its liquid valve. */
    static Cylinders source() {
        Cylinders source = new Cylinders();
        source.role = Role.SOURCE;
        source.valve = Valve.LIQUID;
        source.stamps = CylinderStamps.of(Mass.ofPounds(6), Mass.ofPounds(30))
                .with(Stamp.SPECIFICATION, CylinderSpecification.parse("DOT-39"));
        source.provenance = Optional.of(Provenance.NEW);
        return source;
    }

    static Pressure psig(double psig) {
        return Pressure.ofGauge(GaugePressure.ofPsig(psig), SITE);
    }

    static Weighing gross(double pounds) {
        return new Weighing.Gross(Reading.ofExpanded(Mass.ofPounds(pounds), SCALE.kilograms(), "scale"));
    }

    Cylinders stamped(UnaryOperator<CylinderStamps> change) {
        stamps = change.apply(stamps);
        return this;
    }

    Cylinders marked(String mark) {
        return stamped(each -> each.with(Stamp.SPECIFICATION, CylinderSpecification.parse(mark)));
    }

    Cylinders holding(String designation) {
        label = Optional.of(designation);
        return this;
    }

    Cylinders saidToBeEmpty() {
        label = Optional.empty();
        return this;
    }

    Cylinders from(Provenance where) {
        provenance = Optional.of(where);
        return this;
    }

    Cylinders at(double degreesFahrenheit) {
        fahrenheit = degreesFahrenheit;
        return this;
    }

    Cylinders reading(double psig) {
        pressure = Optional.of(psig(psig));
        return this;
    }

    Cylinders readingPsia(double psia) {
        pressure = Optional.of(Pressure.ofPsia(psia));
        return this;
    }

    Cylinders withoutGauge() {
        pressure = Optional.empty();
        return this;
    }

    Cylinders stirred() {
        atRest = false;
        return this;
    }

    Cylinders weighing(double pounds) {
        weighing = Optional.of(gross(pounds));
        return this;
    }

    Cylinders hanging(double pounds, double hosePounds) {
        Reading<Mass> shown = Reading.ofExpanded(Mass.ofPounds(pounds), SCALE.kilograms(), "scale");
        weighing = Optional.of(new Weighing.Gross(shown, Mass.ofPounds(hosePounds)));
        return this;
    }

    Cylinders zeroed(double beforePounds, double sincePounds) {
        weighing = Optional.of(new Weighing.SinceZero(
                Reading.ofExpanded(Mass.ofPounds(beforePounds), SCALE.kilograms(), "scale"),
                Reading.ofExpanded(MassDifference.ofPounds(sincePounds), SCALE.kilograms(), "scale")));
        return this;
    }

    Cylinders withoutScale() {
        weighing = Optional.empty();
        return this;
    }

    Cylinders warmestAt(double degreesFahrenheit) {
        warmest = Temperature.ofFahrenheit(degreesFahrenheit);
        return this;
    }

    Cylinders under(String set) {
        rules = set;
        return this;
    }

    Cylinders besideSystemOf(String designation) {
        system = designation;
        return this;
    }

    Cylinders onNoDay() {
        day = Optional.empty();
        return this;
    }

    Cylinder cylinder() {
        return new Cylinder(
                "number 4",
                "cylinder",
                role,
                valve,
                false,
                stamps,
                label.map(Catalogue.standard()::find),
                provenance,
                Optional.of("the sailing club"),
                Reading.ofExpanded(Temperature.ofFahrenheit(fahrenheit), 0.5, "thermometer"),
                pressure.map(each -> Reading.ofExpanded(each, 7000, "gauge")),
                atRest,
                weighing,
                warmest,
                FillRules.standard().jurisdiction(rules),
                Mass.ZERO);
    }

    CheckedCylinder checked() {
        return CylinderCheck.of(cylinder(), Samples.curve(system), SITE, day);
    }
}

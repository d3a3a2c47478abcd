package consumer;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.satline.charge.ChargeCase;
import org.satline.charge.ChargeJudge;
import org.satline.charge.ChargeQuestion;
import org.satline.charge.margin.MeteringDevice;
import org.satline.charge.OperatingConditions;
import org.satline.equilibrium.EquationSelfTest;
import org.satline.filling.CylinderSpecification;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillAssessment;
import org.satline.filling.FillAssessor;
import org.satline.filling.FillQuestion;
import org.satline.filling.Stamp;
import org.satline.json.MissingLibraryException;
import org.satline.json.SatlineJson;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.resource.SealedResources;
import org.satline.saturation.Engine;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.tables.TableProvider;

/** A program of somebody else that brings no Jackson: properties, cylinders and verdicts answer, and JSON says what it lacks. */
public final class Main {
    private Main() {}

    /** Fails where an answer is wrong or missing, or where JSON does not say by name what is missing. */
    public static void main(String[] args) {
        check(!present("com.fasterxml.jackson.core.JsonFactory"), "Jackson is on the class path");
        Refrigerant r134a = Catalogue.standard().find("R-134a");
        SaturationCurve curve = SaturationCurves.of(r134a);
        // boils at -20 degC at 132.73 kPa (ASHRAE Handbook Fundamentals 2021, ch. 2, Example 2)
        TemperatureDifference superheat = curve.superheat(Pressure.ofKilopascals(132.73), Temperature.ofCelsius(-12));
        check(Math.abs(superheat.kelvins() - 8) < 0.005, "superheat " + superheat);
        check(curve.engine() == Engine.TABLE, "engine " + curve.engine());
        check(SaturationCurves.solving(Catalogue.standard().find("R-454B")).engine() == Engine.EQUATION, "solving engine");
        List<EquationSelfTest> checks = EquationSelfTest.run("R-718");
        check(!checks.isEmpty() && checks.stream().allMatch(EquationSelfTest::repeats), "check values");
        SealedResources.core().verify();
        TableProvider.resources().verify();
        CylinderStamps stamps = CylinderStamps.of(Mass.ofPounds(26), Mass.ofPounds(47.6))
                .with(Stamp.SPECIFICATION, CylinderSpecification.parse("DOT-4BA400"))
                .with(Stamp.RETEST_DUE, LocalDate.of(2029, 4, 30));
        FillQuestion fill = FillQuestion.of(stamps, curve)
                .on(LocalDate.of(2026, 7, 14))
                .warmestAt(Temperature.ofCelsius(56));
        check(FillAssessor.standard().assess(fill) instanceof FillAssessment.Allowed, "fill limit");
        Pressure liquidPressure = curve.bubblePressure(Temperature.ofCelsius(40));
        SystemReadings readings = SystemReadings.builder()
                .put(Place.LIQUID_PRESSURE, Reading.exact(liquidPressure))
                .put(Place.LIQUID_LINE, Reading.of(Temperature.ofCelsius(34), 0.5, "probe on the liquid line"))
                .build();
        ChargeQuestion question =
                ChargeQuestion.of(MeteringDevice.EXPANSION_VALVE, Optional.of(TemperatureDifference.ofKelvins(5)));
        ChargeCase charge =
                new ChargeCase(curve, readings, question, OperatingConditions.unknown().withOutdoorMinimumMet(true));
        check(ChargeJudge.usual().judge(charge).evidence().deviation().isPresent(), "verdict");
        try {
            new SatlineJson();
            check(false, "JSON without Jackson");
        } catch (MissingLibraryException e) {
            check(e.library().equals("com.fasterxml.jackson.core:jackson-databind"), "missing " + e.library());
        }
        check(SatlineJson.schema().contains("$defs"), "schema");
        System.out.println("consumer without Jackson");
    }

    private static boolean present(String type) {
        try {
            Class.forName(type);
            return true;
        } catch (ClassNotFoundException e) {
            return false;
        }
    }

    private static void check(boolean holds, String what) {
        if (!holds) {
            throw new IllegalStateException(what);
        }
    }
}

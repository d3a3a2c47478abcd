package consumer;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.satline.charge.ChargeJudge;
import org.satline.charge.ChargeQuestion;
import org.satline.charge.MeteringDevice;
import org.satline.charge.SystemReadings;
import org.satline.charge.Verdict;
import org.satline.cylinder.CylinderContents;
import org.satline.equilibrium.EquationSelfTest;
import org.satline.filling.CylinderSpecification;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillAssessor;
import org.satline.filling.FillQuestion;
import org.satline.json.MissingLibraryException;
import org.satline.json.SatlineJson;
import org.satline.measurement.PressureReading;
import org.satline.measurement.TemperatureReading;
import org.satline.quantity.GaugePressure;
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
        CylinderStamps stamps = CylinderStamps.builder()
                .tare(Mass.ofPounds(26))
                .waterCapacity(Mass.ofPounds(47.6))
                .specification(CylinderSpecification.parse("DOT-4BA400"))
                .servicePressure(GaugePressure.ofPsig(400))
                .refillable(true)
                .retestDue(LocalDate.of(2029, 4, 30))
                .build();
        FillQuestion fill = FillQuestion.of(stamps, new CylinderContents.Known(curve))
                .on(LocalDate.of(2026, 7, 14))
                .warmestAt(Temperature.ofCelsius(56));
        check(FillAssessor.standard().assess(fill).governing().isPresent(), "fill limit");
        Pressure liquidPressure = curve.bubblePressure(Temperature.ofCelsius(40));
        SystemReadings readings = SystemReadings.builder()
                .liquidPressure(PressureReading.exact(liquidPressure))
                .liquidLine(TemperatureReading.of(Temperature.ofCelsius(34), 0.5, "probe on the liquid line"))
                .build();
        ChargeQuestion question =
                ChargeQuestion.of(MeteringDevice.EXPANSION_VALVE, Optional.of(TemperatureDifference.ofKelvins(5)));
        check(ChargeJudge.judge(curve, readings, question) instanceof Verdict.Judged, "verdict");
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

package org.satline.examples.exercise;

import java.util.List;
import java.util.Optional;
import org.satline.explanation.Step;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.safety.Task;
import org.satline.saturation.SaturationCurve;

/** Between pressure and saturation temperature. */
final class SaturationMaker implements Maker {
    private final Bench bench;

    SaturationMaker(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Optional<Exercise> draw(Draw draw, Readout readout, Difficulty difficulty) {
        return switch (difficulty) {
            case STARTING ->
                draw.chance(0.5) ? pressureOfCylinder(draw, readout) : temperatureOfCylinder(draw, readout);
            case PRACTISED -> bothPoints(draw, readout);
            case EXPERIENCED -> withDoubt(draw, readout);
        };
    }

    private Exercise.Draft draft(Difficulty difficulty, String designation) {
        return new Exercise.Draft(Topic.SATURATION, difficulty)
                .given(bench.refrigerantGiven(designation))
                .cautions(bench.cautions(designation, Task.READING));
    }

    private Optional<Exercise> pressureOfCylinder(Draw draw, Readout readout) {
        String designation = draw.pick(Bench.PURE);
        SaturationCurve curve = bench.curve(designation);
        Given<Temperature> cylinder =
                readout.temperature("temperature of the cylinder", Temperature.ofCelsius(draw.between(-5, 42)));
        Pressure pressure = curve.bubblePressure(cylinder.value());
        Exercise.Draft draft = draft(Difficulty.STARTING, designation)
                .situation(
                        "A cylinder has stood for a day in one place, valves shut. It holds liquid and vapour of one refrigerant.")
                .given(cylinder)
                .table(SaturationExtract.around(curve, readout, cylinder.value(), cylinder.value(), draw))
                .part(
                        "pressure",
                        "What is the absolute pressure in the cylinder, in " + readout.absoluteUnit() + "?",
                        readout.answer(pressure))
                .work(new Step(
                        "pressure of the cylinder",
                        "p = p_sat(T)",
                        designation + " at " + cylinder.text(),
                        readout.text(pressure),
                        "saturation table of the question, straight line between rows"))
                .derive(List.of(new Step(
                        "saturation pressure",
                        "p_sat(T)",
                        "T = " + cylinder.value().in("K", 2),
                        pressure.in("kPa", 2),
                        curve.source())))
                .slip(
                        "How much liquid there is does not matter as long as there is some; a weight would be needed to tell.");
        return Optional.of(draft.done());
    }

    private Optional<Exercise> temperatureOfCylinder(Draw draw, Readout readout) {
        String designation = draw.pick(Bench.PURE);
        SaturationCurve curve = bench.curve(designation);
        Given<Pressure> pressure = readout.absolute(
                "absolute pressure in the evaporator",
                curve.bubblePressure(Temperature.ofCelsius(draw.between(-25, 12))));
        Temperature boiling = curve.bubbleTemperature(pressure.value());
        Exercise.Draft draft = draft(Difficulty.STARTING, designation)
                .situation("A refrigerant boils in an evaporator at a steady pressure.")
                .given(pressure)
                .table(SaturationExtract.around(curve, readout, boiling, boiling, draw))
                .part(
                        "temperature",
                        "At which temperature does it boil, in " + readout.temperatureUnit() + "?",
                        readout.answer(boiling));
        new Working(draft, readout, curve).bubble(" in the evaporator", pressure.value());
        draft.derive(List.of(lookup("saturation temperature", "T_sat(p)", pressure.value(), boiling, curve)));
        return Optional.of(draft.done());
    }

    private Optional<Exercise> bothPoints(Draw draw, Readout readout) {
        String designation = draw.pick(Bench.GLIDING);
        SaturationCurve curve = bench.curve(designation);
        Given<Atmosphere> air = readout.seaLevel();
        Given<GaugePressure> gauge = readout.gauge(
                "gauge on the evaporator",
                curve.dewPressure(Temperature.ofCelsius(draw.between(-20, 12))),
                air.value());
        Pressure pressure = Pressure.ofGauge(gauge.value(), air.value());
        Temperature bubble = curve.bubbleTemperature(pressure);
        Temperature dew = curve.dewTemperature(pressure);
        Exercise.Draft draft = draft(Difficulty.PRACTISED, designation)
                .situation("A blend boils in an evaporator; the pressure drop in it may be neglected.")
                .given(air, gauge)
                .table(SaturationExtract.around(curve, readout, bubble, dew, draw));
        ask(draft, readout, bubble, dew);
        draft.part(
                "dew point, other unit",
                "What is the dew point in " + readout.other().temperatureUnit() + "?",
                readout.other().answer(dew));
        Working working = new Working(draft, readout, curve);
        Pressure absolute = working.absolute(gauge, air.value());
        working.bubble("", absolute);
        working.dew("", absolute);
        working.converted("dew point", dew);
        draft.derive(List.of(
                lookup("bubble point", "T_bubble(p)", pressure, bubble, curve),
                lookup("dew point", "T_dew(p)", pressure, dew, curve)));
        forgottenAtmosphere(draft, readout, curve, gauge.value());
        return Optional.of(draft.done());
    }

    private static void ask(Exercise.Draft draft, Readout readout, Temperature bubble, Temperature dew) {
        String unit = ", in " + readout.temperatureUnit() + "?";
        draft.part("bubble point", "Where is the bubble point" + unit, readout.answer(bubble));
        draft.part("dew point", "Where is the dew point" + unit, readout.answer(dew));
    }

    private Optional<Exercise> withDoubt(Draw draw, Readout readout) {
        String designation = draw.pick(Bench.GLIDING);
        SaturationCurve curve = bench.curve(designation);
        Given<Atmosphere> air = readout.barometer(Pressure.ofKilopascals(draw.between(78, 96)));
        Given<GaugePressure> gauge = readout.gauge(
                "gauge on the evaporator",
                curve.dewPressure(Temperature.ofCelsius(draw.between(-20, 12))),
                air.value());
        Given<PressureDifference> limit = readout.pressureDifference(
                "limit of error of the gauge, either way",
                PressureDifference.ofPascals(draw.between(0.015, 0.035)
                        * Pressure.ofGauge(gauge.value(), air.value()).pascals()));
        Given<Temperature> roof =
                readout.temperature("air at the machine", Temperature.ofCelsius(draw.between(12, 36)));
        Pressure pressure = Pressure.ofGauge(gauge.value(), air.value());
        Pressure least =
                pressure.plus(PressureDifference.ofPascals(-limit.value().pascals()));
        Pressure most = pressure.plus(limit.value());
        Temperature bubble = curve.bubbleTemperature(pressure);
        Temperature dew = curve.dewTemperature(pressure);
        TemperatureDifference span = curve.dewTemperature(most).minus(curve.dewTemperature(least));
        if (span.kelvins() < 0.8) {
            return Optional.empty(); // the doubt would drown in the rounding
        }
        Exercise.Draft draft = draft(Difficulty.EXPERIENCED, designation)
                .situation(
                        "A blend boils in an evaporator on a roof in the hills; the pressure drop in it may be neglected.")
                .given(air, roof, gauge, limit)
                .table(SaturationExtract.around(
                        curve, readout, curve.bubbleTemperature(least), curve.dewTemperature(most), draw));
        ask(draft, readout, bubble, dew);
        String unit = ", in " + readout.temperatureUnit() + "?";
        draft.part(
                "lowest dew point",
                "What is the lowest dew point that the error of the gauge allows" + unit,
                readout.answer(curve.dewTemperature(least)));
        draft.part("highest dew point", "And the highest" + unit, readout.answer(curve.dewTemperature(most)));
        Working working = new Working(draft, readout, curve);
        Pressure absolute = working.absolute(gauge, air.value());
        working.bubble("", absolute);
        working.dew("", absolute);
        draft.sum(
                "pressure at the limits of error",
                "p - e and p + e",
                readout.text(pressure) + " -/+ " + limit.text(),
                readout.text(least) + " and " + readout.text(most));
        working.dew(" at the least pressure", least);
        working.dew(" at the most pressure", most);
        draft.derive(List.of(
                lookup("bubble point", "T_bubble(p)", pressure, bubble, curve),
                lookup("dew point", "T_dew(p)", pressure, dew, curve)));
        draft.slip("The air at the machine is not needed: what boils takes its temperature from the pressure.");
        forgottenAtmosphere(draft, readout, curve, gauge.value());
        return Optional.of(draft.done());
    }

    private static void forgottenAtmosphere(
            Exercise.Draft draft, Readout readout, SaturationCurve curve, GaugePressure gauge) {
        if (curve.dewPressureRange().low() < gauge.pascals()) {
            draft.slip("Whoever takes the gauge reading for absolute finds a dew point of "
                    + curve.dewTemperature(Pressure.ofPascals(gauge.pascals())).in(readout.temperatureUnit(), 1)
                    + ".");
        }
    }

    static Step lookup(String name, String formula, Pressure pressure, Temperature found, SaturationCurve curve) {
        return new Step(
                name,
                formula,
                "p = " + pressure.in("kPa", 2) + " absolute",
                found.in("degC", 2) + " (" + found.in("degF", 2) + ")",
                curve.source());
    }
}

package org.satline.program.exercise;

import java.util.List;
import java.util.Optional;
import org.satline.explanation.Figure;
import org.satline.explanation.Step;
import org.satline.program.page.Printed;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Length;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.safety.Task;
import org.satline.saturation.SaturationCurve;

/** What a gauge shows where the air is thin. */
final class AltitudeMaker implements Maker {
    private static final String LAW = "exercise.standard-atmosphere-iso-2533-p";
    /** Below this the mistake of assuming sea level would drown in the rounding. */
    private static final double LEAST_ERROR_K = 0.6;

    private final Bench bench;

    AltitudeMaker(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Optional<Exercise> draw(Draw draw, Readout readout, Difficulty difficulty) {
        boolean hard = difficulty == Difficulty.EXPERIENCED;
        String designation = draw.pick(difficulty == Difficulty.STARTING ? Bench.PURE : Bench.COOLING_WITH_GLIDE);
        SaturationCurve curve = bench.curve(designation);
        Exercise.Draft draft = new Exercise.Draft(Topic.ALTITUDE, difficulty, readout)
                .given(bench.refrigerantGiven(designation, readout))
                .cautions(bench.cautions(designation, Task.READING));
        Atmosphere air = difficulty == Difficulty.STARTING
                ? barometer(draw, draft, readout)
                : standard(draw, draft, readout, hard);
        Given<GaugePressure> gauge = readout.gauge(
                readout.say("exercise.gauge-at-the-suction-port"),
                curve.dewPressure(Temperature.ofCelsius(draw.between(difficulty == Difficulty.STARTING ? -12 : 2, 12))),
                air);
        draft.given(gauge)
                .rule(readout.say(
                        "exercise.at-sea-level-the-atmosphere",
                        readout.seaLevel().text()));
        Working working = new Working(draft, readout, curve);
        Pressure pressure = working.absolute(gauge, air);
        Pressure assumed = Pressure.ofGauge(gauge.value(), Atmosphere.standard());
        Temperature dew = working.dew("", pressure);
        Temperature wrong = curve.dewTemperature(assumed);
        TemperatureDifference error = wrong.minus(dew);
        if (error.kelvins() < LEAST_ERROR_K) {
            return Optional.empty();
        }
        draft.table(SaturationExtract.around(curve, readout, dew, wrong, draw));
        String saturation = curve.refrigerant().isBlend()
                ? readout.say("exercise.dew-point")
                : readout.say("exercise.saturation-temperature");
        String unit = readout.say("exercise.in", readout.temperatureUnit());
        draft.part(
                        "pressure",
                        readout.say("exercise.what-is-the-absolute-suction", readout.absoluteUnit()),
                        Answer.Figure.of(readout.number(pressure), 1, readout.absoluteUnit(), readout.us() ? 0.1 : 0.2))
                .part("dew point", readout.say("exercise.what-is-the-at-that", saturation, unit), readout.answer(dew))
                .part(
                        "dew point at sea level",
                        readout.say("exercise.what-would-someone-find-who", unit),
                        readout.answer(wrong));
        draft.sum(
                readout.say("exercise.absolute-pressure-for-someone-who"),
                "p = p_gauge + p_atm",
                gauge.text() + " + " + readout.seaLevel().text(),
                readout.text(assumed));
        working.dew(" " + readout.say("exercise.for-someone-who-assumes-sea"), assumed);
        if (hard) {
            superheat(draw, draft, working, readout, dew, wrong);
        }
        draft.derive(List.of(
                new Step(
                        "absolutePressure",
                        "p = p_gauge + p_atm",
                        List.of(Figure.of("p_gauge", gauge.value()), Figure.of("p_atm", air.pressure())),
                        Figure.of("p", pressure),
                        air.description()),
                SaturationMaker.lookup("dewPoint", "T_dew(p)", pressure, dew, curve)));
        // of the figures that the working prints, so that who subtracts them finds the same
        TemperatureDifference printed =
                Temperature.parse(readout.text(wrong)).minus(Temperature.parse(readout.text(dew)));
        draft.mistake("dew point", readout.answer(wrong), readout.say("exercise.the-sea-level-s-atmosphere"));
        draft.slip(readout.say(
                "exercise.taking-sea-level-makes-the", saturation, printed.in(readout.differenceUnit(), 2)));
        return Optional.of(draft.done());
    }

    private static Atmosphere barometer(Draw draw, Exercise.Draft draft, Readout readout) {
        Given<Atmosphere> air = readout.barometer(Pressure.ofKilopascals(draw.between(74, 90)));
        draft.situation(readout.say("exercise.a-machine-runs-on-a")).given(air);
        return air.value();
    }

    private static Atmosphere standard(Draw draw, Exercise.Draft draft, Readout readout, boolean hard) {
        Given<Length> altitude = readout.altitude(Length.ofMetres(draw.between(900, 2900)));
        Atmosphere air = Atmosphere.atAltitude(altitude.value());
        draft.situation(readout.say("exercise.an-air-conditioner-runs-in"))
                .given(altitude)
                .rule(readout.say(LAW) + (readout.us() ? "; 1 ft = 0.3048 m, 1 psi = 6.895 kPa." : "."));
        if (hard) {
            Pressure report = Pressure.ofKilopascals(draw.between(100.2, 103.2));
            draft.given(Given.words(
                    readout.say("exercise.weather-report-for-the-valley"),
                    readout.us()
                            ? Printed.figure("%.2f inHg (%.2f psia)", report.inchesOfMercury(), report.psia())
                            : report.in("mbar", 0) + " (" + report.in("kPa", 1) + ")"));
            draft.rule(readout.say("exercise.take-the-standard-atmosphere-at"));
            draft.slip(readout.say("exercise.the-weather-report-is-reduced"));
        }
        double metres = altitude.value().metres();
        draft.work(
                readout.say("exercise.atmosphere-on-site"),
                "p_atm = 101.325 kPa (1 - 0.0065 H / 288.15)^5.2559",
                Printed.figure("101.325 kPa x (1 - 0.0065 x %.0f / 288.15)^5.2559", metres),
                air.pressure().in("kPa", 2)
                        + (readout.us() ? " (" + air.pressure().in("psia", 2) + ")" : ""),
                "ISO 2533:1975");
        return air;
    }

    private static void superheat(
            Draw draw, Exercise.Draft draft, Working working, Readout readout, Temperature dew, Temperature wrong) {
        Given<Temperature> line = readout.temperature(
                readout.say("exercise.suction-line-temperature"),
                dew.plus(TemperatureDifference.ofKelvins(draw.between(4, 9))));
        draft.given(line);
        String unit = readout.say("exercise.in", readout.differenceUnit());
        TemperatureDifference superheat = working.superheat(line.value(), dew);
        TemperatureDifference supposed = working.difference(
                readout.say("exercise.superheat-for-someone-who-assumes"),
                "T_suction_line - T_dew",
                line.value(),
                wrong);
        draft.part("superheat", readout.say("exercise.how-large-is-the-superheat", unit), readout.answer(superheat))
                .part(
                        "superheat at sea level",
                        readout.say("exercise.what-superheat-would-someone-find", unit),
                        readout.answer(supposed));
    }
}

package org.satline.program.exercise;

import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.program.exercise.RunningSystems.Running;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.saturation.SaturationCurve;

/**
 * The four readings of a running system as instruments show them. Gauges are read at the site's atmosphere.
 *
 * @param atmosphere of the site
 * @param suctionPressure gauge at the suction port
 * @param suctionLine clamp on the suction line
 * @param liquidPressure gauge at the liquid port
 * @param liquidLine clamp on the liquid line
 */
record LineReadings(
        Given<Atmosphere> atmosphere,
        Given<GaugePressure> suctionPressure,
        Given<Temperature> suctionLine,
        Given<GaugePressure> liquidPressure,
        Given<Temperature> liquidLine) {
    static final String LINES = "exercise.superheat-counts-from-the-dew";

    static LineReadings of(Running running, Readout readout, Given<Atmosphere> atmosphere) {
        Atmosphere air = atmosphere.value();
        return new LineReadings(
                atmosphere,
                readout.gauge(
                        readout.say("exercise.suction-pressure"),
                        running.state().suctionPressure(),
                        air),
                readout.temperature(
                        readout.say("exercise.suction-line-temperature"),
                        running.state().suctionLine()),
                readout.gauge(
                        readout.say("exercise.liquid-pressure"), running.state().liquidPressure(), air),
                readout.temperature(
                        readout.say("exercise.liquid-line-temperature"),
                        running.state().liquidLine()));
    }

    Pressure suction() {
        return Pressure.ofGauge(suctionPressure.value(), atmosphere.value());
    }

    Pressure liquid() {
        return Pressure.ofGauge(liquidPressure.value(), atmosphere.value());
    }

    TemperatureDifference superheat(SaturationCurve curve) {
        return curve.superheat(suction(), suctionLine.value());
    }

    TemperatureDifference subcooling(SaturationCurve curve) {
        return curve.subcooling(liquid(), liquidLine.value());
    }

    /** The readings for the library, each with its standard uncertainty; 0 for exact. */
    SystemReadings typed(double pressureUncertaintyPa, double temperatureUncertaintyK) {
        return SystemReadings.builder()
                .suction(
                        Reading.of(suction(), pressureUncertaintyPa, "low-side gauge"),
                        Reading.of(suctionLine.value(), temperatureUncertaintyK, "clamp, suction line"))
                .liquid(
                        Reading.of(liquid(), pressureUncertaintyPa, "high-side gauge"),
                        Reading.of(liquidLine.value(), temperatureUncertaintyK, "clamp, liquid line"))
                .build();
    }

    /** Puts the readings and the rows of the table that they need into the question. */
    void put(Exercise.Draft draft, SaturationCurve curve, Readout readout, Draw draw) {
        draft.given(atmosphere, suctionPressure, suctionLine, liquidPressure, liquidLine);
        draft.table(SaturationExtract.around(
                curve, readout, curve.bubbleTemperature(suction()), curve.dewTemperature(suction()), draw));
        draft.table(SaturationExtract.around(
                curve, readout, curve.bubbleTemperature(liquid()), curve.dewTemperature(liquid()), draw));
        draft.rule(readout.say(LINES));
    }

    /** Works out the superheat. */
    TemperatureDifference workSuperheat(Working working) {
        Temperature dew = working.dew(
                " " + working.say("exercise.at-the-suction-pressure"),
                working.absolute(suctionPressure, atmosphere.value()));
        return working.superheat(suctionLine.value(), dew);
    }

    /** Works out the subcooling. */
    TemperatureDifference workSubcooling(Working working) {
        Temperature bubble = working.bubble(
                " " + working.say("exercise.at-the-liquid-pressure"),
                working.absolute(liquidPressure, atmosphere.value()));
        return working.subcooling(bubble, liquidLine.value());
    }
}

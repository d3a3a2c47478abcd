package org.satline.program.exercise;

import org.satline.charge.margin.Criterion;
import org.satline.charge.margin.MeteringDevice;
import org.satline.quantity.TemperatureDifference;

/** The bands of the published charge check, as the questions print them. */
final class Tolerances {
    /** Where bands and ranges come from. */
    static final String SOURCE = "California Energy Code, Reference Appendix RA3.2 (2008)";

    private Tolerances() {}

    /** Half-width of the band: 5 degF of superheat, 3 degF of subcooling. */
    static Given<TemperatureDifference> given(Readout readout, Criterion criterion) {
        return readout.difference(
                readout.say("exercise.tolerance-around-the-target-either"),
                TemperatureDifference.ofFahrenheitDegrees(criterion == Criterion.SUPERHEAT ? 5 : 3));
    }

    static String article(Readout readout, MeteringDevice metering) {
        return metering == MeteringDevice.EXPANSION_VALVE
                ? readout.say("exercise.an-expansion-valve")
                : readout.say("exercise.a-fixed-orifice");
    }

    /** Which quantity shows the charge. */
    static String shows(Readout readout, MeteringDevice metering) {
        return metering == MeteringDevice.EXPANSION_VALVE
                ? readout.say("exercise.with-an-expansion-valve-the")
                : readout.say("exercise.with-a-fixed-orifice-the");
    }

    /** Which quantity shows the charge, and when the other one forbids a verdict. */
    static String rule(MeteringDevice metering, Readout readout) {
        return metering == MeteringDevice.EXPANSION_VALVE
                ? readout.say(
                        "exercise.no-level-is-called-where",
                        shows(readout, metering),
                        text(readout, 4),
                        text(readout, 25),
                        SOURCE)
                : readout.say(
                        "exercise.no-level-is-called-where-the",
                        shows(readout, metering),
                        text(readout, 15),
                        text(readout, 2),
                        SOURCE);
    }

    private static String text(Readout readout, double fahrenheitDegrees) {
        return TemperatureDifference.ofFahrenheitDegrees(fahrenheitDegrees).in(readout.differenceUnit(), 1);
    }
}

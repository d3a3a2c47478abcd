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
                "tolerance around the target, either way",
                TemperatureDifference.ofFahrenheitDegrees(criterion == Criterion.SUPERHEAT ? 5 : 3));
    }

    static String article(MeteringDevice metering) {
        return metering == MeteringDevice.EXPANSION_VALVE ? "an expansion valve" : "a fixed orifice";
    }

    /** Which quantity shows the charge. */
    static String shows(MeteringDevice metering) {
        return metering == MeteringDevice.EXPANSION_VALVE
                ? "With an expansion valve the charge shows in the subcooling: more refrigerant, more subcooling."
                : "With a fixed orifice the charge shows in the superheat: more refrigerant, less superheat.";
    }

    /** Which quantity shows the charge, and when the other one forbids a verdict. */
    static String rule(MeteringDevice metering, Readout readout) {
        return metering == MeteringDevice.EXPANSION_VALVE
                ? shows(metering) + " No level is called where the"
                        + " superheat is below " + text(readout, 4) + ", nor where it is above " + text(readout, 25)
                        + " and the subcooling is not low (" + SOURCE + ")."
                : shows(metering) + " No level is called where the"
                        + " superheat is too high although the subcooling is above " + text(readout, 15)
                        + ", nor where the superheat is too low although the subcooling is below " + text(readout, 2)
                        + " (band: " + SOURCE + "; limits of subcooling: common practice, no source).";
    }

    private static String text(Readout readout, double fahrenheitDegrees) {
        return TemperatureDifference.ofFahrenheitDegrees(fahrenheitDegrees).in(readout.differenceUnit(), 1);
    }
}

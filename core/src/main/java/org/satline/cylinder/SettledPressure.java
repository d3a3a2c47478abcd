package org.satline.cylinder;

import java.util.List;

/** Largest contents whose settled pressure at a temperature above the saturation line stays within an allowed gauge pressure. */
final class SettledPressure {
    private SettledPressure() {}

    static RuleOutcome limit(FillRule rule, RuleCase it, double temperatureK, double allowedGaugePa, String what) {
        return new RuleOutcome.NotTested(
                rule,
                "at " + Figures.temperature(temperatureK) + " " + it.gas()
                        + " is above its critical temperature; the pressure of the "
                        + "contents against " + Figures.pressure(allowedGaugePa) + " of " + what
                        + " needs an equation of state outside the saturation line",
                List.of());
    }
}

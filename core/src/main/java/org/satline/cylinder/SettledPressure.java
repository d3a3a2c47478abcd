package org.satline.cylinder;

import java.util.List;
import org.satline.explanation.Step;

/** Largest contents whose settled pressure, at a temperature above the saturation line, stays within an allowed gauge pressure. */
final class SettledPressure {
    private SettledPressure() {}

    static RuleOutcome limit(FillRule rule, RuleCase it, double temperatureK, double allowedGaugePa, String what) {
        double allowed = it.absolute(allowedGaugePa);
        // above the end of the saturation line there is one phase, so density and pressure go one to one
        double density = it.model().get().stateAt(temperatureK, allowed).density();
        double kilograms = density * it.volume();
        Step dense = new Step(
                "density of " + it.gas() + " at the pressure allowed",
                "rho(T, p) with p = share of the " + what + " + 1 atm",
                "rho(" + Figures.temperature(temperatureK) + ", " + Figures.pressure(allowed) + " absolute)",
                Figures.density(density),
                it.curve().source());
        Step step = new Step(
                "largest contents by " + rule.name(),
                rule.inequality(),
                "m <= " + Figures.density(density) + " x " + Figures.volume(it.volume()),
                Figures.mass(kilograms),
                rule.source());
        return it.limit(rule, kilograms, List.of(), List.of(it.volumeStep(), dense, step));
    }
}

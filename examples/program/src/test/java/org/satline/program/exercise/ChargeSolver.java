package org.satline.program.exercise;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.satline.quantity.TemperatureDifference;

/** Verdict and next step by hand; ranges and bands of the California Energy Code, Reference Appendix RA3.2 (2008), in degF. */
final class ChargeSolver {
    private static final String BAND = "tolerance around the target, either way";

    private ChargeSolver() {}

    static Map<String, Object> verdict(PrintedExercise it, Lines lines) {
        boolean valve = it.situation().contains("an expansion valve");
        Map<String, Object> found = HandSolver.margins(it, lines);
        TemperatureDifference superheat = (TemperatureDifference) Objects.requireNonNull(found.get("superheat"));
        TemperatureDifference subcooling = (TemperatureDifference) Objects.requireNonNull(found.get("subcooling"));
        TemperatureDifference measured = valve ? subcooling : superheat;
        double deviation = measured.kelvins() - target(it, valve).kelvins();
        found.put("deviation", TemperatureDifference.ofKelvins(deviation));
        double band = it.difference(BAND).kelvins();
        String level = level(valve, deviation, band);
        boolean none = contradicted(valve, level, superheat.fahrenheitDegrees(), subcooling.fahrenheitDegrees());
        found.put("level", none ? "no level" : level);
        found.put(
                "advice",
                none
                        ? "no refrigerant is moved: "
                        : level.equals("low")
                                ? "add refrigerant"
                                : level.equals("high") ? "take refrigerant out" : "leave");
        if (it.states("standard uncertainty of either gauge")) {
            TemperatureDifference u = HandSolver.uncertainty(
                    it, lines, valve ? it.pressure("liquid pressure") : it.pressure("suction pressure"), !valve);
            found.put("uncertainty", u);
            boolean holds = Math.abs(Math.abs(deviation) - band) >= 1.645 * u.kelvins();
            if (!none && !holds) {
                found.put("advice", "read again");
            }
            found.put("holds", none ? "there is no level" : holds ? "yes" : "no: undecided");
        }
        return found;
    }

    private static TemperatureDifference target(PrintedExercise it, boolean valve) {
        return it.difference("maker's target " + (valve ? "subcooling" : "superheat"));
    }

    private static String level(boolean valve, double deviationK, double bandK) {
        double towardsMore = valve ? deviationK : -deviationK;
        return towardsMore > bandK ? "high" : towardsMore < -bandK ? "low" : "on target";
    }

    private static boolean contradicted(boolean valve, String level, double superheatF, double subcoolingF) {
        if (valve) {
            return superheatF < 4 || (superheatF > 25 && !level.equals("low"));
        }
        return (level.equals("low") && subcoolingF > 15) || (level.equals("high") && subcoolingF < 2);
    }

    static Map<String, Object> nextStep(PrintedExercise it) {
        boolean valve = it.situation().contains("an expansion valve");
        String shown = valve ? "subcooling" : "superheat";
        boolean first = it.states(shown);
        double now = it.difference(first ? shown : shown + " now, settled").kelvins();
        double deviation = now - target(it, valve).kelvins();
        String level = level(valve, deviation, it.difference(BAND).kelvins());
        Map<String, Object> found = new LinkedHashMap<>();
        found.put("deviation", TemperatureDifference.ofKelvins(deviation));
        found.put("direction", level.equals("low") ? "add" : level.equals("high") ? "take out" : "leave as it is");
        found.put(
                "where",
                level.equals("low")
                        ? "from a clean source cylinder"
                        : level.equals("high") ? "from the high-side liquid port" : "nothing");
        if (!first) {
            amounts(it, found, shown, now, deviation);
        }
        return found;
    }

    private static void amounts(
            PrintedExercise it, Map<String, Object> found, String shown, double now, double deviation) {
        boolean out = it.states("refrigerant taken out");
        boolean us = it.text(shown + " before").endsWith("degF");
        double moved =
                it.mass(out ? "refrigerant taken out" : "refrigerant added").kilograms() * (out ? -1 : 1);
        double responseK = (now - it.difference(shown + " before").kelvins()) / moved;
        double rest = Math.abs(deviation / responseK);
        double perMass = us ? 1.8 * 0.45359237 : 1; // degF for each K, kg for each lb
        double inUnit = us ? 1 / 0.45359237 : 1;
        found.put("response", responseK * perMass);
        found.put("rest", rest * inUnit);
        if (!it.states("scale under the cylinder now")) {
            return;
        }
        double scale = it.mass("scale under the cylinder now").kilograms();
        double limit = it.states("stop weight of the recovery cylinder")
                ? it.mass("stop weight of the recovery cylinder").kilograms() - scale
                : scale
                        - it.mass("weight of the source cylinder when it counts as empty")
                                .kilograms();
        double share = Double.parseDouble(it.rule("no more than (\\d+) %")) / 100;
        found.put("available", limit * inUnit);
        found.put("now", Math.min(limit, share * rest) * inUnit);
        found.put("cylinder", limit > share * rest ? "yes" : "no");
    }
}

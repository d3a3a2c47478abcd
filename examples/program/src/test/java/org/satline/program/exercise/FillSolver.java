package org.satline.program.exercise;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.satline.quantity.Mass;
import org.satline.quantity.Temperature;

/** Fill limits by hand. */
final class FillSolver {
    private static final Pattern SERVICE = Pattern.compile("SP (\\d+) psig");

    private FillSolver() {}

    static Map<String, Object> solve(PrintedExercise it, Lines curve) {
        double water = it.mass("water capacity (WC)").kilograms();
        double litres = water / curve.waterDensity() * 1000;
        Map<String, Object> found = new LinkedHashMap<>();
        if (it.states("test pressure on the collar (TP)")) {
            return european(it, found, curve, water, litres);
        }
        Temperature warmest = it.temperature("warmest that the cylinder may become");
        double byWarmest = 0.8 * curve.liquidDensity(warmest) * litres / 1000;
        found.put("limit", Mass.ofKilograms(byWarmest));
        found.put("limit, warmest", Mass.ofKilograms(byWarmest));
        found.put("gross", Mass.ofKilograms(it.mass("tare weight (TW)").kilograms() + byWarmest));
        if (!it.states("specification and service pressure (SP)")) {
            return room(it, found, byWarmest, true);
        }
        double full = curve.liquidDensity(Temperature.ofCelsius(55)) * litres / 1000;
        found.put("limit, liquid-full", Mass.ofKilograms(full));
        found.put("stricter", Mass.ofKilograms(full - byWarmest));
        return room(it, found, Math.min(byWarmest, full), allowed(it, found));
    }

    private static Map<String, Object> european(
            PrintedExercise it, Map<String, Object> found, Lines curve, double water, double litres) {
        String row = it.beginning("row of the table");
        Matcher figures = Pattern.compile("filling ratio ([0-9.]+), test pressure (\\d+) bar")
                .matcher(row);
        if (!figures.find()) {
            throw new AssertionError(row);
        }
        double ratio = Double.parseDouble(figures.group(1)) * water;
        double fifty = 0.95 * curve.liquidDensity(Temperature.ofCelsius(50)) * litres / 1000;
        double sixty = curve.liquidDensity(Temperature.ofCelsius(60)) * litres / 1000;
        double least = Math.min(ratio, Math.min(fifty, sixty));
        boolean allowed =
                Double.parseDouble(it.text("test pressure on the collar (TP)").replace(" bar gauge", ""))
                        >= Double.parseDouble(figures.group(2));
        found.put("may be filled", allowed ? "yes" : "no");
        found.put("limit, ratio", Mass.ofKilograms(ratio));
        found.put("limit, 95 %", Mass.ofKilograms(fifty));
        found.put("limit, liquid-full", Mass.ofKilograms(sixty));
        found.put(
                "governing",
                least == ratio ? "filling-ratio" : least == fifty ? "liquid-95-50C" : "not-liquid-full-60C");
        return room(it, found, least, allowed);
    }

    private static Map<String, Object> room(
            PrintedExercise it, Map<String, Object> found, double limit, boolean allowed) {
        if (it.states("scale now (gross)")) {
            double gross = it.mass("scale now (gross)").kilograms();
            double tare = it.mass("tare weight (TW)").kilograms();
            double hose = it.states("refrigerant in the hoses when it is stopped")
                    ? it.mass("refrigerant in the hoses when it is stopped").kilograms()
                            + 2
                                    * it.mass("expanded uncertainty of the scale (U, k = 2)")
                                            .kilograms()
                    : 0;
            double room = limit - (gross - tare) - hose;
            found.put("contents", Mass.ofKilograms(gross - tare));
            found.put("room", allowed ? Mass.ofKilograms(room) : "nothing");
            found.put("stop", allowed ? Mass.ofKilograms(gross + room) : "nothing");
        }
        return found;
    }

    /** 49 CFR 173.301a(c): the gauge pressure at 55 degC may not exceed 1.25 times the service pressure. */
    private static boolean allowed(PrintedExercise it, Map<String, Object> found) {
        Matcher mark = SERVICE.matcher(it.text("specification and service pressure (SP)"));
        if (!mark.find()) {
            throw new AssertionError("no service pressure is stated");
        }
        double allowedPa = 1.25 * Double.parseDouble(mark.group(1)) * 6894.757293168361;
        double gaugePa = HandSolver.curve(it.designation())
                        .bubblePressure(Temperature.ofCelsius(55))
                        .pascals()
                - 101325;
        found.put("may be filled", gaugePa <= allowedPa ? "yes" : "no");
        return gaugePa <= allowedPa;
    }
}

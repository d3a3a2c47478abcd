package org.satline.examples.exercise;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.satline.quantity.Mass;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;

/** Fill limits by hand. */
final class FillSolver {
    private static final Pattern SERVICE = Pattern.compile("SP (\\d+) psig");

    private FillSolver() {}

    static Map<String, Object> solve(PrintedExercise it) {
        SaturationCurve curve = HandSolver.curve(it.designation());
        double litres = it.mass("water capacity (WC)").kilograms() / 0.9990; // water at 60 degF: 999.0 kg/m3
        double warmest = it.temperature("warmest that the cylinder may become").kelvins();
        double tare = it.mass("tare weight (TW)").kilograms();
        double byWarmest = 0.8 * density(curve, warmest) * litres / 1000;
        double full = density(curve, 328.15) * litres / 1000;
        double at77 = 0.8 * density(curve, 298.15) * litres / 1000;
        double governing = it.states("specification and service pressure (SP)")
                ? Math.min(byWarmest, Math.min(full, at77))
                : byWarmest;
        Map<String, Object> found = new LinkedHashMap<>();
        found.put("limit", Mass.ofKilograms(byWarmest));
        found.put("limit, warmest", Mass.ofKilograms(byWarmest));
        found.put("limit, liquid-full", Mass.ofKilograms(full));
        found.put("limit, 77 degF", Mass.ofKilograms(at77));
        found.put("gross", Mass.ofKilograms(tare + byWarmest));
        found.put(
                "governing",
                governing == byWarmest
                        ? "liquid-80-warmest"
                        : governing == full ? "not-liquid-full-131F" : "liquid-80-77F");
        boolean allowed = allowed(it, curve, found);
        if (it.states("scale now (gross)")) {
            double gross = it.mass("scale now (gross)").kilograms();
            double hose = it.states("refrigerant in the hoses when it is stopped")
                    ? it.mass("refrigerant in the hoses when it is stopped").kilograms()
                            + 2
                                    * it.mass("expanded uncertainty of the scale (U, k = 2)")
                                            .kilograms()
                    : 0;
            double room = governing - (gross - tare) - hose;
            found.put("contents", Mass.ofKilograms(gross - tare));
            found.put("room", allowed ? Mass.ofKilograms(room) : "nothing");
            found.put("stop", allowed ? Mass.ofKilograms(gross + room) : "nothing");
        }
        return found;
    }

    private static double density(SaturationCurve curve, double kelvins) {
        return curve.bubbleLiquidDensity(kelvins);
    }

    /** 49 CFR 173.301a(c): the gauge pressure at 55 degC may not exceed 1.25 times the service pressure. */
    private static boolean allowed(PrintedExercise it, SaturationCurve curve, Map<String, Object> found) {
        if (!it.states("specification and service pressure (SP)")) {
            return true;
        }
        Matcher mark = SERVICE.matcher(it.text("specification and service pressure (SP)"));
        if (!mark.find()) {
            throw new AssertionError("no service pressure is stated");
        }
        double allowedPa = 1.25 * Double.parseDouble(mark.group(1)) * 6894.757293168361;
        double gaugePa = curve.bubblePressure(Temperature.ofCelsius(55)).pascals() - 101325;
        found.put("may be filled", gaugePa <= allowedPa ? "yes" : "no");
        return gaugePa <= allowedPa;
    }
}

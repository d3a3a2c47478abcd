package org.satline.program.exercise;

import java.util.LinkedHashMap;
import java.util.Map;
import org.satline.quantity.Density;
import org.satline.quantity.Length;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;

/** Which way it flows, and from where a hose can be purged, by hand. */
final class TransferSolver {
    private static final String CYLINDER = "cylinder, at rest, liquid and vapour inside";

    private TransferSolver() {}

    static Map<String, Object> flow(PrintedExercise it, Lines curve) {
        String port = it.states("gauge at the low-side port")
                ? "gauge at the low-side port"
                : "gauge at the high-side liquid port";
        double system = it.pressure(port).pascals();
        double cylinder;
        double doubt = 0;
        if (it.states(CYLINDER)) {
            Temperature at = it.temperature(CYLINDER);
            double bubble = curve.bubblePressure(at).pascals();
            double dew = curve.dewPressure(at).pascals();
            cylinder = (bubble + dew) / 2;
            doubt = (bubble - dew) / Math.sqrt(3);
        } else {
            cylinder = it.pressure("gauge at the cylinder").pascals();
        }
        Map<String, Object> found = new LinkedHashMap<>();
        found.put("driving pressure", PressureDifference.ofPascals(system - cylinder));
        boolean uncertain = it.states("expanded uncertainty of the gauge (k = 2)");
        double gauge = uncertain
                ? PressureDifference.parse(it.text("expanded uncertainty of the gauge (k = 2)"))
                        .pascals()
                : 0;
        double expanded = Math.hypot(gauge, doubt);
        if (uncertain) {
            found.put("uncertainty", PressureDifference.ofPascals(expanded));
        }
        boolean close = Math.abs(system - cylinder) <= expanded;
        boolean intoSystem = cylinder > system;
        boolean wantedIntoSystem = it.situation().contains("from the source cylinder into the system");
        found.put("direction", close ? "too close to call" : intoSystem ? "from the cylinder" : "from the system");
        found.put("wanted", !close && intoSystem == wantedIntoSystem ? "yes" : "no");
        return found;
    }

    /** Vapour of the system out at the cylinder, unless that end seals itself, whichever way the hose hangs. */
    static Map<String, Object> purge(PrintedExercise it) {
        String atSystem = it.text("end of the hose at the system");
        String atCylinder = it.text("end of the hose at the cylinder");
        String sealing = "self-sealing end";
        boolean venting = !it.text("refrigerant").contains("(safety group A3)");
        boolean sweeps = venting && it.states("pressure at the low-side port") && pushes(it);
        if (!sweeps || (atSystem.equals(sealing) && atCylinder.equals(sealing))) {
            Map<String, Object> none = new LinkedHashMap<>();
            none.put("possible", "no");
            none.put("loose", "none");
            none.put("moves", "none; instead: ");
            none.put("released", "none");
            return none;
        }
        return purged(it, atCylinder.equals(sealing));
    }

    /** 0.3 bar above the air or more. */
    private static boolean pushes(PrintedExercise it) {
        return it.pressure("pressure at the low-side port").pascals()
                >= it.atmosphere().pressure().pascals() + 30_000;
    }

    private static Map<String, Object> purged(PrintedExercise it, boolean turned) {
        double bore = Length.parse(it.text("bore of the hose")).metres();
        double length = Length.parse(it.text("length of the hose")).metres();
        double density = Density.parse(it.text("density of the vapour at the low-side port"))
                .kilogramsPerCubicMetre();
        Map<String, Object> found = new LinkedHashMap<>();
        found.put("possible", turned ? "yes, after it is turned round" : "yes, as it hangs");
        found.put("loose", "the one at the cylinder");
        found.put("moves", "1) ");
        found.put("released", Mass.ofKilograms(3 * Math.PI / 4 * bore * bore * length * density));
        densityIsOfSaturatedVapour(it, density);
        return found;
    }

    /** The stated density, against the equation of state at the stated pressure. */
    private static void densityIsOfSaturatedVapour(PrintedExercise it, double density) {
        SaturationCurve curve = HandSolver.curve(it.designation());
        Pressure pressure = it.pressure("pressure at the low-side port");
        double computed = curve.dewVapourDensity(curve.dewTemperatureK(pressure.pascals()));
        if (Math.abs(computed - density) > 0.009) { // half of the last digit: 0.0005 lb/ft3
            throw new AssertionError(it.title() + ": density " + density + " against " + computed);
        }
    }
}

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

    static Map<String, Object> purge(PrintedExercise it, Lines curve) {
        boolean recovery = it.situation().contains("out of a system");
        String[] ends = {it.text("end of the hose at the system"), it.text("end of the hose at the cylinder")};
        boolean[] pushes = {
            pushes(it.beginning("pressure at the system's port")), pushes(it.beginning("pressure in the cylinder"))
        };
        int first = recovery ? 0 : 1;
        for (boolean turned : new boolean[] {false, true}) {
            for (int from : new int[] {first, 1 - first}) {
                int far = 1 - from;
                String farEnd = turned ? ends[1 - far] : ends[far];
                if (pushes[from] && !farEnd.equals("self-sealing end")) {
                    return purged(it, from, turned);
                }
            }
        }
        Map<String, Object> none = new LinkedHashMap<>();
        none.put("possible", "no");
        none.put("from", "none");
        none.put("loose", "none");
        none.put("moves", "none; instead: evacuate the hose");
        none.put("released", "none");
        return none;
    }

    private static boolean pushes(String pressure) {
        return pressure.endsWith(" psig") || (pressure.endsWith(" kPa gauge") && !pressure.startsWith("-"));
    }

    private static Map<String, Object> purged(PrintedExercise it, int from, boolean turned) {
        String[] sides = {"system", "cylinder"};
        double bore = Length.parse(it.text("bore of the hose")).metres();
        double length = Length.parse(it.text("length of the hose")).metres();
        String name =
                from == 0 ? "density of the vapour at the system's port" : "density of the vapour in the cylinder";
        double density = Density.parse(it.text(name)).kilogramsPerCubicMetre();
        Map<String, Object> found = new LinkedHashMap<>();
        found.put("possible", turned ? "yes, after it is turned round" : "yes, as it hangs");
        found.put("from", "from the " + sides[from]);
        found.put("loose", "the one at the " + sides[1 - from]);
        found.put("moves", "1) close the " + sides[from] + " valve; 2) close the " + sides[1 - from] + " valve");
        found.put("released", Mass.ofKilograms(3 * Math.PI / 4 * bore * bore * length * density));
        densityIsOfSaturatedVapour(it, from, density);
        return found;
    }

    /** The stated density, against the equation of state at the stated pressure. */
    private static void densityIsOfSaturatedVapour(PrintedExercise it, int from, double density) {
        SaturationCurve curve = HandSolver.curve(it.designation());
        Pressure pressure = Pressure.parse(
                it.beginning(from == 0 ? "pressure at the system's port" : "pressure in the cylinder"),
                it.atmosphere());
        double computed = curve.dewVapourDensity(curve.dewTemperatureK(pressure.pascals()));
        if (Math.abs(computed - density) > 0.009) { // half of the last digit: 0.0005 lb/ft3
            throw new AssertionError(it.title() + ": density " + density + " against " + computed);
        }
    }
}

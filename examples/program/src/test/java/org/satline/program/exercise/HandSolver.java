package org.satline.program.exercise;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/**
 * Solves printed exercises from what they state, with sums of its own and the engine that solves the equations of state, not the tables
 * from which the exercises are made. What a part is expected to be: a quantity, a number in the unit of the answer, or the beginning of a
 * text.
 */
final class HandSolver {
    private static final Map<String, SaturationCurve> CURVES = new ConcurrentHashMap<>();

    private HandSolver() {}

    static SaturationCurve curve(String designation) {
        return CURVES.computeIfAbsent(
                designation,
                name -> SaturationCurves.solving(Catalogue.standard().find(name)));
    }

    static Map<String, Object> solve(Topic topic, PrintedExercise it, Lines lines) {
        return switch (topic) {
            case SATURATION -> saturation(it, lines);
            case MARGINS -> margins(it, lines);
            case GLIDE -> glide(it, lines);
            case ALTITUDE -> altitude(it, lines);
            case FILL_LIMIT -> FillSolver.solve(it, lines);
            case FLOW -> TransferSolver.flow(it, lines);
            case PURGE -> TransferSolver.purge(it);
            case VERDICT -> ChargeSolver.verdict(it, lines);
            case NEXT_STEP -> ChargeSolver.nextStep(it);
        };
    }

    private static Map<String, Object> saturation(PrintedExercise it, Lines curve) {
        Map<String, Object> found = new LinkedHashMap<>();
        if (it.states("temperature of the cylinder at noon")) {
            found.put(
                    "pressure in the morning",
                    curve.bubblePressure(it.temperature("temperature of the cylinder in the morning")));
            found.put("pressure at noon", curve.bubblePressure(it.temperature("temperature of the cylinder at noon")));
            return found;
        }
        if (it.states("absolute pressure in the evaporator")) {
            found.put("boiling", curve.bubbleTemperature(it.pressure("absolute pressure in the evaporator")));
            found.put("condensing", curve.bubbleTemperature(it.pressure("absolute pressure in the condenser")));
            return found;
        }
        if (it.states("gauge on the condenser")) {
            found.put("bubble point in the condenser", curve.bubbleTemperature(it.pressure("gauge on the condenser")));
        }
        Pressure pressure = it.pressure("gauge on the evaporator");
        found.put("bubble point", curve.bubbleTemperature(pressure));
        found.put("dew point", curve.dewTemperature(pressure));
        found.put("dew point, other unit", curve.dewTemperature(pressure));
        if (it.states("limit of error of the gauge, either way")) {
            double limit = PressureDifference.parse(it.text("limit of error of the gauge, either way"))
                    .pascals();
            found.put("lowest dew point", curve.dewTemperature(Pressure.ofPascals(pressure.pascals() - limit)));
            found.put("highest dew point", curve.dewTemperature(Pressure.ofPascals(pressure.pascals() + limit)));
        }
        return found;
    }

    static Map<String, Object> margins(PrintedExercise it, Lines curve) {
        Pressure suction = it.pressure("suction pressure");
        Temperature dew = curve.dewTemperature(suction);
        TemperatureDifference superheat = kelvins(it.temperature("suction-line temperature"), dew);
        TemperatureDifference subcooling = kelvins(
                curve.bubbleTemperature(it.pressure("liquid pressure")), it.temperature("liquid-line temperature"));
        Map<String, Object> found = new LinkedHashMap<>();
        found.put("superheat", superheat);
        found.put("superheat, other unit", superheat);
        found.put("subcooling", subcooling);
        found.put("subcooling, other unit", subcooling);
        if (it.states("standard uncertainty of either gauge")) {
            found.put("uncertainty of the superheat", uncertainty(it, curve, suction, true));
        }
        return found;
    }

    /** JCGM 100:2008, 5.1.2, with the slope of the saturation line over 0.2 % of the pressure. */
    static TemperatureDifference uncertainty(PrintedExercise it, Lines curve, Pressure at, boolean dewLine) {
        Pressure low = Pressure.ofPascals(at.pascals() * 0.999);
        Pressure high = Pressure.ofPascals(at.pascals() * 1.001);
        TemperatureDifference step = dewLine
                ? kelvins(curve.dewTemperature(high), curve.dewTemperature(low))
                : kelvins(curve.bubbleTemperature(high), curve.bubbleTemperature(low));
        double slope = step.kelvins() / (high.pascals() - low.pascals());
        double gauge = slope
                * PressureDifference.parse(it.text("standard uncertainty of either gauge"))
                        .pascals();
        return TemperatureDifference.ofKelvins(Math.hypot(
                gauge, it.difference("standard uncertainty of either clamp").kelvins()));
    }

    private static Map<String, Object> glide(PrintedExercise it, Lines curve) {
        Pressure pressure = it.states("suction pressure")
                ? it.pressure("suction pressure")
                : it.pressure("absolute pressure in the evaporator");
        Temperature bubble = curve.bubbleTemperature(pressure);
        Temperature dew = curve.dewTemperature(pressure);
        Map<String, Object> found = new LinkedHashMap<>();
        found.put("bubble point", bubble);
        found.put("dew point", dew);
        found.put("glide", kelvins(dew, bubble));
        if (it.states("absolute pressure in the condenser")) {
            Pressure high = it.pressure("absolute pressure in the condenser");
            found.put("glide in the condenser", kelvins(curve.dewTemperature(high), curve.bubbleTemperature(high)));
        }
        if (it.states("suction-line temperature")) {
            Temperature line = it.temperature("suction-line temperature");
            found.put("superheat", kelvins(line, dew));
            found.put("superheat, other unit", kelvins(line, dew));
            found.put("superheat from the wrong line", kelvins(line, bubble));
        }
        return found;
    }

    private static Map<String, Object> altitude(PrintedExercise it, Lines curve) {
        Pressure pressure = it.pressure("gauge at the suction port");
        Pressure assumed = Pressure.parse(it.text("gauge at the suction port"), Atmosphere.standard());
        Temperature dew = curve.dewTemperature(pressure);
        Temperature wrong = curve.dewTemperature(assumed);
        Map<String, Object> found = new LinkedHashMap<>();
        found.put("pressure", pressure);
        found.put("dew point", dew);
        found.put("dew point at sea level", wrong);
        if (it.states("suction-line temperature")) {
            Temperature line = it.temperature("suction-line temperature");
            found.put("superheat", kelvins(line, dew));
            found.put("superheat at sea level", kelvins(line, wrong));
        }
        return found;
    }

    static TemperatureDifference kelvins(Temperature more, Temperature less) {
        return TemperatureDifference.ofKelvins(more.kelvins() - less.kelvins());
    }
}

package consumer;

import org.satline.json.SatlineJson;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.Engine;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/**
 * A program of somebody else: superheat of R-134a at 132.73 kPa, which boils at -20 degC (ASHRAE Handbook Fundamentals 2021, ch. 2, Example
 * 2).
 */
public final class Main {
    private Main() {}

    /** Fails where an answer is wrong, where the tables were not found, or where JSON does not come back equal. */
    public static void main(String[] args) {
        SaturationCurve curve = SaturationCurves.of(Catalogue.standard().find("R-134a"));
        TemperatureDifference superheat = curve.superheat(Pressure.ofKilopascals(132.73), Temperature.ofCelsius(-12));
        check(Math.abs(superheat.kelvins() - 8) < 0.005, "superheat " + superheat);
        check(curve.engine() == Engine.TABLE, "engine " + curve.engine());
        check(SaturationCurves.solving(curve.refrigerant()).engine() == Engine.EQUATION, "solving engine");
        SatlineJson json = new SatlineJson();
        check(json.read(json.write(superheat), TemperatureDifference.class).equals(superheat), "JSON");
        check(SatlineJson.schema().contains("$defs"), "schema");
        System.out.println("consumer in " + Main.class.getModule() + ", core in " + SatlineJson.class.getModule());
    }

    private static void check(boolean holds, String what) {
        if (!holds) {
            throw new IllegalStateException(what);
        }
    }
}

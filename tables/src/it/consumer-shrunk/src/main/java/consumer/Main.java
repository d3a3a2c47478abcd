package consumer;

import org.satline.charge.ChargeRow;
import org.satline.charge.ChargeScreen;
import org.satline.charge.margin.MeteringDevice;
import org.satline.charge.ScreenedCharge;
import org.satline.json.SatlineJson;
import org.satline.measurement.Place;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.Engine;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** Runs from one shrunk jar: R-134a boils at -20 degC at 132.73 kPa (ASHRAE Handbook Fundamentals 2021, ch. 2, Example 2). */
public final class Main {
    private Main() {}

    /** Fails where a table, an equation, an enum constant or a JSON form did not survive. */
    public static void main(String[] args) {
        check(!Left.present("org.satline.simulation.SimulatedSystem"), "nothing was left out");
        Refrigerant r134a = Catalogue.standard().find("R-134a");
        SaturationCurve curve = SaturationCurves.of(r134a);
        TemperatureDifference superheat = curve.superheat(Pressure.ofKilopascals(132.73), Temperature.ofCelsius(-12));
        check(Math.abs(superheat.kelvins() - 8) < 0.005, "superheat " + superheat);
        check(curve.engine() == Engine.TABLE, "engine " + curve.engine());
        check(SaturationCurves.solving(r134a).engine() == Engine.EQUATION, "solving engine");
        ScreenedCharge screened = ChargeScreen.of(curve)
                .screen(ChargeRow.of(r134a, MeteringDevice.ofLabel("fixed-orifice"))
                        .suction(300_000, 281)
                        .liquid(1_000_000, 306)
                        .read(Place.OUTDOOR_AIR, 301)
                        .read(Place.RETURN_WET_BULB, 291)
                        .read(Place.RETURN_DRY_BULB, 298)
                        .build());
        SatlineJson json = new SatlineJson();
        check(json.read(json.write(screened), ScreenedCharge.class).equals(screened), "JSON of " + screened);
        check(json.read(json.write(superheat), TemperatureDifference.class).equals(superheat), "JSON");
        System.out.println("consumer, shrunk: " + screened);
    }

    /** Asks for a class by a name that the shrinker does not see. */
    private static final class Left {
        static boolean present(String type) {
            try {
                Class.forName(new StringBuilder(type).toString());
                return true;
            } catch (ClassNotFoundException e) {
                return false;
            }
        }
    }

    private static void check(boolean holds, String what) {
        if (!holds) {
            throw new IllegalStateException(what);
        }
    }
}

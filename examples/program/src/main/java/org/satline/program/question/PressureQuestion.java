package org.satline.program.question;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.satline.explanation.Figure;
import org.satline.explanation.Step;
import org.satline.measurement.Reading;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Pressure;
import org.satline.quantity.Quantity;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;
import org.satline.transfer.ConnectionPoint;
import org.satline.transfer.PointKind;
import org.satline.wording.Wording;

/** Which pressure stands in a cylinder at its temperature. Stateless, thread-safe. */
public final class PressureQuestion {
    private PressureQuestion() {}

    /**
     * Answers.
     *
     * @param curve of what is in the cylinder
     * @param temperature of the cylinder
     * @param air in which a gauge would be read
     * @param wording words and units
     * @return the pressure, from the dew to the bubble line
     * @throws org.satline.quantity.OutOfValidityException if the temperature is outside the saturation line
     */
    public static Reply of(SaturationCurve curve, Temperature temperature, Atmosphere air, Wording wording) {
        Pressure bubble = Pressure.ofPascals(curve.bubblePressurePa(temperature.kelvins()));
        Pressure dew = Pressure.ofPascals(curve.dewPressurePa(temperature.kelvins()));
        List<Step> steps = ConnectionPoint.bySaturation(
                        PointKind.SOURCE_CYLINDER_VAPOUR_VALVE, curve, Reading.exact(temperature))
                .steps();
        boolean one = bubble.equals(dew);
        List<String> lines = new ArrayList<>();
        lines.add(wording.message(
                one ? "reply.pressure.one" : "reply.pressure.most",
                Figure.of("gauge", bubble.gauge(air)),
                Figure.of("absolute", bubble)));
        if (!one) {
            lines.add(wording.message(
                    "reply.pressure.least", Figure.of("gauge", dew.gauge(air)), Figure.of("absolute", dew)));
        }
        Map<String, Quantity<?>> numbers = new LinkedHashMap<>();
        numbers.put("bubblePressure", bubble);
        numbers.put("dewPressure", dew);
        List<String> notes =
                new ArrayList<>(List.of(wording.message("reply.pressure.liquid"), Asked.told(air, wording)));
        curve.warnings().forEach(warning -> notes.add(wording.of(warning)));
        return new Reply(
                true, lines, numbers, Map.of("refrigerant", curve.refrigerant().designation()), steps, notes);
    }
}

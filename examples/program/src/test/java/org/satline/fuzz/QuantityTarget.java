package org.satline.fuzz;

import java.util.List;
import java.util.function.Function;
import org.satline.quantity.Density;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Length;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.quantity.Power;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Quantity;
import org.satline.quantity.SpecificEnthalpy;
import org.satline.quantity.Speed;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.quantity.UnitSystem;
import org.satline.quantity.Volume;
import org.satline.quantity.VolumeFlow;

/** Quantities from any text: finite in both systems of units. */
public final class QuantityTarget {
    private static final List<Function<String, ? extends Quantity<?>>> READERS = List.of(
            Temperature::parse,
            TemperatureDifference::parse,
            Pressure::parse,
            GaugePressure::parse,
            PressureDifference::parse,
            Length::parse,
            Mass::parse,
            MassDifference::parse,
            Volume::parse,
            Density::parse,
            SpecificEnthalpy::parse,
            Speed::parse,
            VolumeFlow::parse,
            Power::parse);

    private QuantityTarget() {}

    public static void fuzzerTestOneInput(byte[] bytes) {
        String text = Target.text(bytes);
        for (Function<String, ? extends Quantity<?>> reader : READERS) {
            Target.refusesAtMost(() -> {
                Quantity<?> read = reader.apply(text);
                Target.require(Double.isFinite(read.si()), "not finite");
                for (UnitSystem system : UnitSystem.values()) {
                    Target.require(read.format(system).matches("[-0-9.E+]+ .+"), read.format(system));
                }
            });
        }
    }
}

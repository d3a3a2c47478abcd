package org.satline.json;

import java.lang.reflect.Type;
import java.util.Map;
import java.util.TreeMap;
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
import org.satline.quantity.SpecificEntropy;
import org.satline.quantity.SpecificHeatCapacity;
import org.satline.quantity.Speed;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.quantity.Volume;
import org.satline.quantity.VolumeFlow;

/** The codecs of the quantities: the value in the SI unit in which it is held, so that no bit is lost. */
final class QuantityCodecs {
    private QuantityCodecs() {}

    static void putInto(Map<Type, Codec<?>> known) {
        put(known, Density.class, "kg/m3", Density::kilogramsPerCubicMetre, Density::ofKilogramsPerCubicMetre);
        put(known, GaugePressure.class, "Pa gauge", GaugePressure::pascals, GaugePressure::ofPascals);
        put(known, Length.class, "m", Length::metres, Length::ofMetres);
        put(known, Mass.class, "kg", Mass::kilograms, Mass::ofKilograms);
        put(known, MassDifference.class, "kg", MassDifference::kilograms, MassDifference::ofKilograms);
        put(known, Power.class, "W", Power::watts, Power::ofWatts);
        put(known, Pressure.class, "Pa", Pressure::pascals, Pressure::ofPascals);
        put(known, PressureDifference.class, "Pa", PressureDifference::pascals, PressureDifference::ofPascals);
        put(
                known,
                SpecificEnthalpy.class,
                "J/kg",
                SpecificEnthalpy::joulesPerKilogram,
                SpecificEnthalpy::ofJoulesPerKilogram);
        put(
                known,
                SpecificEntropy.class,
                "J/(kg K)",
                SpecificEntropy::joulesPerKilogramKelvin,
                SpecificEntropy::ofJoulesPerKilogramKelvin);
        put(
                known,
                SpecificHeatCapacity.class,
                "J/(kg K)",
                SpecificHeatCapacity::joulesPerKilogramKelvin,
                SpecificHeatCapacity::ofJoulesPerKilogramKelvin);
        put(known, Speed.class, "m/s", Speed::metresPerSecond, Speed::ofMetresPerSecond);
        put(known, Temperature.class, "K", Temperature::kelvins, Temperature::ofKelvins);
        put(known, TemperatureDifference.class, "K", TemperatureDifference::kelvins, TemperatureDifference::ofKelvins);
        put(known, Volume.class, "m3", Volume::cubicMetres, Volume::ofCubicMetres);
        put(known, VolumeFlow.class, "m3/s", VolumeFlow::cubicMetresPerSecond, VolumeFlow::ofCubicMetresPerSecond);
    }

    /** A quantity whose kind is not told by its place: it names the kind itself. */
    static Codec<Quantity<?>> any(Map<Type, Codec<?>> known, Codec<Forms.Amount> form) {
        Map<String, Codec.Quantity<?>> byKind = new TreeMap<>();
        known.forEach((type, codec) -> {
            if (type instanceof Class<?> kind && codec instanceof Codec.Quantity<?> quantity) {
                byKind.put(kind.getSimpleName(), quantity);
            }
        });
        return new Codec.Via<>(form, Forms.Amount::of, amount -> {
            Codec.Quantity<?> kind = byKind.get(amount.kind());
            if (kind == null || !kind.unit().equals(amount.unit())) {
                throw new IllegalArgumentException("a quantity of this kind and unit is unknown; known kinds are "
                        + byKind.keySet() + ", each in its SI unit");
            }
            return (Quantity<?>) kind.ofSi().apply(amount.value());
        });
    }

    private static <T> void put(
            Map<Type, Codec<?>> known, Class<T> type, String unit, Function<T, Double> toSi, Function<Double, T> ofSi) {
        known.put(type, new Codec.Quantity<>(unit, toSi, ofSi));
    }
}

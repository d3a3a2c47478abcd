package org.satline.quantity;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** Every quantity with its reader, and every factory with its accessor, for tests that treat all of them alike. */
final class Quantities {
    record Textual(String name, Function<String, ? extends Quantity<?>> reader) {
        Quantity<?> parse(String text) {
            return reader.apply(text);
        }

        @Override
        public String toString() {
            return name;
        }
    }

    record Access(String name, DoubleFunction<? extends Quantity<?>> factory, Function<Quantity<?>, Double> accessor) {
        static <Q extends Quantity<Q>> Access of(
                String name, Class<Q> type, DoubleFunction<Q> factory, ToDoubleFunction<Q> accessor) {
            return new Access(type.getSimpleName() + " " + name, factory, q -> accessor.applyAsDouble(type.cast(q)));
        }

        @Override
        public String toString() {
            return name;
        }
    }

    static final List<Textual> ALL = List.of(
            new Textual("temperature", Temperature::parse),
            new Textual("temperature difference", TemperatureDifference::parse),
            new Textual("pressure", Pressure::parse),
            new Textual("gauge pressure", GaugePressure::parse),
            new Textual("pressure difference", PressureDifference::parse),
            new Textual("length", Length::parse),
            new Textual("mass", Mass::parse),
            new Textual("mass difference", MassDifference::parse),
            new Textual("volume", Volume::parse),
            new Textual("density", Density::parse),
            new Textual("specific enthalpy", SpecificEnthalpy::parse),
            new Textual("specific entropy", SpecificEntropy::parse),
            new Textual("specific heat capacity", SpecificHeatCapacity::parse),
            new Textual("speed", Speed::parse),
            new Textual("volume flow", VolumeFlow::parse),
            new Textual("power", Power::parse));

    static final List<Access> ACCESS = List.of(
            Access.of(
                    "kilogramsPerCubicMetre",
                    Density.class,
                    Density::ofKilogramsPerCubicMetre,
                    Density::kilogramsPerCubicMetre),
            Access.of("poundsPerCubicFoot", Density.class, Density::ofPoundsPerCubicFoot, Density::poundsPerCubicFoot),
            Access.of("pascals", GaugePressure.class, GaugePressure::ofPascals, GaugePressure::pascals),
            Access.of("kilopascals", GaugePressure.class, GaugePressure::ofKilopascals, GaugePressure::kilopascals),
            Access.of("bars", GaugePressure.class, GaugePressure::ofBars, GaugePressure::bars),
            Access.of("psig", GaugePressure.class, GaugePressure::ofPsig, GaugePressure::psig),
            Access.of(
                    "inchesOfMercuryVacuum",
                    GaugePressure.class,
                    GaugePressure::ofInchesOfMercuryVacuum,
                    GaugePressure::inchesOfMercuryVacuum),
            Access.of("metres", Length.class, Length::ofMetres, Length::metres),
            Access.of("millimetres", Length.class, Length::ofMillimetres, Length::millimetres),
            Access.of("feet", Length.class, Length::ofFeet, Length::feet),
            Access.of("inches", Length.class, Length::ofInches, Length::inches),
            Access.of("kilograms", Mass.class, Mass::ofKilograms, Mass::kilograms),
            Access.of("grams", Mass.class, Mass::ofGrams, Mass::grams),
            Access.of("pounds", Mass.class, Mass::ofPounds, Mass::pounds),
            Access.of("ounces", Mass.class, Mass::ofOunces, Mass::ounces),
            Access.of("kilograms", MassDifference.class, MassDifference::ofKilograms, MassDifference::kilograms),
            Access.of("grams", MassDifference.class, MassDifference::ofGrams, MassDifference::grams),
            Access.of("pounds", MassDifference.class, MassDifference::ofPounds, MassDifference::pounds),
            Access.of("ounces", MassDifference.class, MassDifference::ofOunces, MassDifference::ounces),
            Access.of("watts", Power.class, Power::ofWatts, Power::watts),
            Access.of("kilowatts", Power.class, Power::ofKilowatts, Power::kilowatts),
            Access.of("btuPerHour", Power.class, Power::ofBtuPerHour, Power::btuPerHour),
            Access.of("tonsOfRefrigeration", Power.class, Power::ofTonsOfRefrigeration, Power::tonsOfRefrigeration),
            Access.of("pascals", Pressure.class, Pressure::ofPascals, Pressure::pascals),
            Access.of("kilopascals", Pressure.class, Pressure::ofKilopascals, Pressure::kilopascals),
            Access.of("megapascals", Pressure.class, Pressure::ofMegapascals, Pressure::megapascals),
            Access.of("bars", Pressure.class, Pressure::ofBars, Pressure::bars),
            Access.of("psia", Pressure.class, Pressure::ofPsia, Pressure::psia),
            Access.of("microns", Pressure.class, Pressure::ofMicrons, Pressure::microns),
            Access.of("inchesOfMercury", Pressure.class, Pressure::ofInchesOfMercury, Pressure::inchesOfMercury),
            Access.of("pascals", PressureDifference.class, PressureDifference::ofPascals, PressureDifference::pascals),
            Access.of(
                    "kilopascals",
                    PressureDifference.class,
                    PressureDifference::ofKilopascals,
                    PressureDifference::kilopascals),
            Access.of("bars", PressureDifference.class, PressureDifference::ofBars, PressureDifference::bars),
            Access.of("psi", PressureDifference.class, PressureDifference::ofPsi, PressureDifference::psi),
            Access.of(
                    "joulesPerKilogram",
                    SpecificEnthalpy.class,
                    SpecificEnthalpy::ofJoulesPerKilogram,
                    SpecificEnthalpy::joulesPerKilogram),
            Access.of(
                    "kilojoulesPerKilogram",
                    SpecificEnthalpy.class,
                    SpecificEnthalpy::ofKilojoulesPerKilogram,
                    SpecificEnthalpy::kilojoulesPerKilogram),
            Access.of(
                    "btuPerPound",
                    SpecificEnthalpy.class,
                    SpecificEnthalpy::ofBtuPerPound,
                    SpecificEnthalpy::btuPerPound),
            Access.of(
                    "joulesPerKilogramKelvin",
                    SpecificEntropy.class,
                    SpecificEntropy::ofJoulesPerKilogramKelvin,
                    SpecificEntropy::joulesPerKilogramKelvin),
            Access.of(
                    "kilojoulesPerKilogramKelvin",
                    SpecificEntropy.class,
                    SpecificEntropy::ofKilojoulesPerKilogramKelvin,
                    SpecificEntropy::kilojoulesPerKilogramKelvin),
            Access.of(
                    "btuPerPoundFahrenheitDegree",
                    SpecificEntropy.class,
                    SpecificEntropy::ofBtuPerPoundFahrenheitDegree,
                    SpecificEntropy::btuPerPoundFahrenheitDegree),
            Access.of(
                    "joulesPerKilogramKelvin",
                    SpecificHeatCapacity.class,
                    SpecificHeatCapacity::ofJoulesPerKilogramKelvin,
                    SpecificHeatCapacity::joulesPerKilogramKelvin),
            Access.of(
                    "kilojoulesPerKilogramKelvin",
                    SpecificHeatCapacity.class,
                    SpecificHeatCapacity::ofKilojoulesPerKilogramKelvin,
                    SpecificHeatCapacity::kilojoulesPerKilogramKelvin),
            Access.of(
                    "btuPerPoundFahrenheitDegree",
                    SpecificHeatCapacity.class,
                    SpecificHeatCapacity::ofBtuPerPoundFahrenheitDegree,
                    SpecificHeatCapacity::btuPerPoundFahrenheitDegree),
            Access.of("metresPerSecond", Speed.class, Speed::ofMetresPerSecond, Speed::metresPerSecond),
            Access.of("feetPerSecond", Speed.class, Speed::ofFeetPerSecond, Speed::feetPerSecond),
            Access.of("feetPerMinute", Speed.class, Speed::ofFeetPerMinute, Speed::feetPerMinute),
            Access.of("kelvins", Temperature.class, Temperature::ofKelvins, Temperature::kelvins),
            Access.of("celsius", Temperature.class, Temperature::ofCelsius, Temperature::celsius),
            Access.of("fahrenheit", Temperature.class, Temperature::ofFahrenheit, Temperature::fahrenheit),
            Access.of(
                    "kelvins",
                    TemperatureDifference.class,
                    TemperatureDifference::ofKelvins,
                    TemperatureDifference::kelvins),
            Access.of(
                    "fahrenheitDegrees",
                    TemperatureDifference.class,
                    TemperatureDifference::ofFahrenheitDegrees,
                    TemperatureDifference::fahrenheitDegrees),
            Access.of("litres", Volume.class, Volume::ofLitres, Volume::litres),
            Access.of("cubicMetres", Volume.class, Volume::ofCubicMetres, Volume::cubicMetres),
            Access.of("cubicFeet", Volume.class, Volume::ofCubicFeet, Volume::cubicFeet),
            Access.of("cubicInches", Volume.class, Volume::ofCubicInches, Volume::cubicInches),
            Access.of(
                    "cubicMetresPerSecond",
                    VolumeFlow.class,
                    VolumeFlow::ofCubicMetresPerSecond,
                    VolumeFlow::cubicMetresPerSecond),
            Access.of(
                    "cubicMetresPerHour",
                    VolumeFlow.class,
                    VolumeFlow::ofCubicMetresPerHour,
                    VolumeFlow::cubicMetresPerHour),
            Access.of("litresPerSecond", VolumeFlow.class, VolumeFlow::ofLitresPerSecond, VolumeFlow::litresPerSecond),
            Access.of(
                    "cubicFeetPerMinute",
                    VolumeFlow.class,
                    VolumeFlow::ofCubicFeetPerMinute,
                    VolumeFlow::cubicFeetPerMinute));

    private Quantities() {}

    static Textual named(String name) {
        return ALL.stream().filter(q -> q.name().equals(name)).findFirst().orElseThrow();
    }

    /** Some value of a quantity, 1.5 times its SI unit. */
    static Quantity<?> sample(Textual quantity) {
        return quantity.parse("1.5 " + firstUnit(quantity));
    }

    /** Symbols of the units that a quantity accepts, as its own message lists them. */
    static List<String> units(Textual quantity) {
        try {
            quantity.parse("1");
        } catch (QuantityFormatException e) {
            return e.acceptedUnits();
        }
        throw new AssertionError(quantity + " took a number without a unit");
    }

    private static String firstUnit(Textual quantity) {
        return units(quantity).get(0);
    }
}

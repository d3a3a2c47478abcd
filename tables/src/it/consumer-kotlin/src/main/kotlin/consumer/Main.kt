package consumer

import org.satline.charge.ChargeRow
import org.satline.charge.ChargeScreen
import org.satline.charge.margin.MeteringDevice
import org.satline.charge.ScreenedCharge
import org.satline.measurement.Place
import org.satline.quantity.Mass
import org.satline.quantity.Pressure
import org.satline.quantity.Temperature
import org.satline.quantity.TemperatureDifference
import org.satline.refrigerant.Catalogue
import org.satline.saturation.SaturationCurves

/** A program of somebody else: R-134a boils at -20 degC at 132.73 kPa (ASHRAE Handbook Fundamentals 2021, ch. 2, Example 2). */
fun main() {
    val r134a = Catalogue.standard().find("R-134a")
    val curve = SaturationCurves.of(r134a)
    val superheat = curve.superheat(Pressure.ofKilopascals(132.73), Temperature.ofCelsius(-12.0))
    check(superheat > TemperatureDifference.ofKelvins(7.99) && superheat < TemperatureDifference.ofKelvins(8.01)) { "$superheat" }
    check(Temperature.ofCelsius(1.0) < Temperature.ofCelsius(2.0))
    check(Mass.ofPounds(2.0) >= Mass.ofPounds(2.0))
    check(maxOf(Pressure.ofPascals(1.0), Pressure.ofPascals(2.0)) == Pressure.ofPascals(2.0))
    check(listOf(Temperature.ofCelsius(3.0), Temperature.ofCelsius(1.0)).sorted().first() == Temperature.ofCelsius(1.0))
    check(Temperature.ofCelsius(3.0) in Temperature.ofCelsius(1.0)..Temperature.ofCelsius(5.0))
    val row = ChargeRow.of(r134a, MeteringDevice.EXPANSION_VALVE)
        .suction(300_000.0, 281.0).liquid(1_000_000.0, 306.0).read(Place.OUTDOOR_AIR, 301.0).target(6.0).build()
    // a `when` over a sealed interface needs no else
    val level = when (val found = ChargeScreen.of(curve).screen(row)) {
        is ScreenedCharge.Level -> found.level().toString()
        is ScreenedCharge.NoLevel -> found.reason().name
    }
    println("consumer in Kotlin: $superheat, $level")
}

package org.satline.visit;

import java.util.Locale;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;

/** Figures within sentences: in units of the trade and in SI, side by side. */
final class Figures {
    private Figures() {}

    static String of(Temperature temperature) {
        return figure("%.1f degF (%.1f degC)", temperature.fahrenheit(), temperature.celsius());
    }

    static String of(TemperatureDifference difference) {
        return figure("%.1f degF (%.1f K)", difference.fahrenheitDegrees(), difference.kelvins());
    }

    static String of(Pressure pressure) {
        return figure("%.1f psia (%.1f kPa)", pressure.psia(), pressure.kilopascals());
    }

    static String of(GaugePressure pressure) {
        return figure("%.1f psig (%.1f kPa)", pressure.psig(), pressure.kilopascals());
    }

    static String of(Mass mass) {
        return figure("%.2f lb (%.2f kg)", mass.pounds(), mass.kilograms());
    }

    static String of(MassDifference mass) {
        return figure("%.2f lb (%.2f kg)", mass.pounds(), mass.kilograms());
    }

    /** For limits: rounded down, so that the printed figure is never above the one computed. */
    static String down(MassDifference mass) {
        return figure(
                "%.2f lb (%.2f kg)", Math.floor(mass.pounds() * 100) / 100, Math.floor(mass.kilograms() * 100) / 100);
    }

    static String figure(String format, Object... numbers) {
        return String.format(Locale.ROOT, format, numbers);
    }
}

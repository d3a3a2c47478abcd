package org.satline.program.visit;

import java.util.Locale;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;

/** Quantities as the page prints them: in units of the trade and in SI, side by side. */
final class Both {
    private Both() {}

    static String of(Temperature t) {
        return figure("%.1f degF (%.1f degC)", t.fahrenheit(), t.celsius());
    }

    static String of(Pressure p) {
        return figure("%.1f psia (%.1f kPa)", p.psia(), p.kilopascals());
    }

    static String of(PressureDifference p) {
        return figure("%.1f psi (%.1f kPa)", p.psi(), p.kilopascals());
    }

    static String of(Mass m) {
        return figure("%.2f lb (%.2f kg)", m.pounds(), m.kilograms());
    }

    /** For limits: rounded down, so that the printed figure is never above the one computed. */
    static String down(Mass m) {
        return figure("%.2f lb (%.2f kg)", Math.floor(m.pounds() * 100) / 100, Math.floor(m.kilograms() * 100) / 100);
    }

    static String figure(String format, Object... numbers) {
        return String.format(Locale.ROOT, format, numbers);
    }
}

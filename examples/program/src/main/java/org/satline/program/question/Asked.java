package org.satline.program.question;

import java.util.Optional;
import java.util.function.Function;
import org.satline.explanation.Figure;
import org.satline.program.file.BadInputException;
import org.satline.program.file.Shown;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Length;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.Volume;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.wording.Wording;

/** Reads the words of a question; what cannot be used is named with its value and what is allowed. */
public final class Asked {
    private Asked() {}

    /**
     * Reads one word.
     *
     * @param <T> what it becomes
     * @param name what it is called on the command line
     * @param text the word
     * @param reader reads it
     * @return what it says
     * @throws BadInputException if it cannot be used
     */
    public static <T> T read(String name, String text, Function<String, T> reader) {
        try {
            return reader.apply(text);
        } catch (IllegalArgumentException e) {
            String message = String.valueOf(e.getMessage());
            throw new BadInputException(
                    name + ": " + (message.contains(text) ? "" : Shown.quoted(text) + ": ") + message);
        }
    }

    /**
     * Reads a refrigerant that has a saturation line.
     *
     * @param text its designation
     * @return its curve
     * @throws BadInputException if it is not known
     */
    public static SaturationCurve curve(String text) {
        return read(
                "REFRIGERANT",
                text,
                word -> SaturationCurves.of(Catalogue.standard().find(word)));
    }

    /**
     * Reads a water capacity: a mass of water, or litres.
     *
     * @param text such as 47.7 lb or 21.6 l
     * @return {@link Mass} or {@link Volume}, as stamped
     */
    public static Object waterCapacity(String text) {
        return text.strip().matches("[0-9.]+ ?(?:[lL]|litres?|liters?)") ? Volume.parse(text) : Mass.parse(text);
    }

    /** What a gauge counts from, in words. */
    static String told(Atmosphere air, Wording wording) {
        return wording.message("reply.air", Figure.of("air", air.pressure()));
    }

    /**
     * The air in which a gauge is read.
     *
     * @param altitude of the site, where stated
     * @param barometer on site, where stated
     * @return the atmosphere; the standard one at sea level where nothing is stated
     * @throws BadInputException if both are stated or one cannot be used
     */
    public static Atmosphere air(Optional<String> altitude, Optional<String> barometer) {
        if (altitude.isPresent() && barometer.isPresent()) {
            throw new BadInputException("--altitude and --barometer are both given; give one of them");
        }
        return altitude.map(text -> read("--altitude", text, word -> Atmosphere.atAltitude(Length.parse(word))))
                .or(() -> barometer.map(
                        text -> read("--barometer", text, word -> Atmosphere.measured(Pressure.parse(word)))))
                .orElseGet(Atmosphere::standard);
    }
}

package org.satline.cylinder;

import java.time.LocalDate;
import java.util.Optional;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Parts;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Refrigerant;

/**
 * What is asked of the fill rules: this cylinder, this refrigerant, this set of rules. Immutable, thread-safe.
 *
 * @param stamps the stamps of the cylinder
 * @param contents what is or will be in it
 * @param jurisdiction the set of rules; the strictest of them governs
 * @param maximumTemperature the warmest temperature that the cylinder may see, T_max, in [-50, 70] degC
 * @param fillDate the day of filling, against which the retest date is held
 * @param alreadyInside the refrigerant that the cylinder holds already, where it is not empty
 * @param partialStampsAccepted true for a mere calculation: a missing stamp then becomes a caution instead of a refusal
 */
public record FillQuestion(
        CylinderStamps stamps,
        CylinderContents contents,
        Jurisdiction jurisdiction,
        Temperature maximumTemperature,
        Optional<LocalDate> fillDate,
        Optional<Refrigerant> alreadyInside,
        boolean partialStampsAccepted) {
    /** 130 degF, the warmest temperature usually assumed: common practice, no source. */
    public static final Temperature USUAL_MAXIMUM = Temperature.ofFahrenheit(130);

    /** {@inheritDoc} */
    public FillQuestion {
        Parts.required("stamps contents jurisdiction", stamps, contents, jurisdiction);
        Parts.required("maximumTemperature fillDate alreadyInside", maximumTemperature, fillDate, alreadyInside);
        double celsius = maximumTemperature.celsius();
        if (!(celsius >= -50 && celsius <= 70)) {
            throw OutOfValidityException.of(
                    "warmest temperature of the cylinder",
                    celsius,
                    "degC",
                    -50,
                    70,
                    "the fill rules",
                    "130 degF (54.4 degC) is usual");
        }
    }

    /**
     * Asks with the usual settings: set {@code us}, 130 degF, no date, empty cylinder, all stamps wanted.
     *
     * @param stamps the stamps of the cylinder
     * @param contents what is or will be in it
     * @return the question
     */
    public static FillQuestion of(CylinderStamps stamps, CylinderContents contents) {
        return new FillQuestion(
                stamps,
                contents,
                FillRules.standard().defaultJurisdiction(),
                USUAL_MAXIMUM,
                Optional.empty(),
                Optional.empty(),
                false);
    }

    /**
     * Takes another set of rules.
     *
     * @param set the set
     * @return the changed question
     */
    public FillQuestion under(Jurisdiction set) {
        return new FillQuestion(
                stamps, contents, set, maximumTemperature, fillDate, alreadyInside, partialStampsAccepted);
    }

    /**
     * Takes another warmest temperature.
     *
     * @param temperature T_max
     * @return the changed question
     */
    public FillQuestion warmestAt(Temperature temperature) {
        return new FillQuestion(
                stamps, contents, jurisdiction, temperature, fillDate, alreadyInside, partialStampsAccepted);
    }

    /**
     * States the day of filling.
     *
     * @param date the day
     * @return the changed question
     */
    public FillQuestion on(LocalDate date) {
        return new FillQuestion(
                stamps,
                contents,
                jurisdiction,
                maximumTemperature,
                Optional.of(date),
                alreadyInside,
                partialStampsAccepted);
    }

    /**
     * States what the cylinder holds already.
     *
     * @param refrigerant the refrigerant inside
     * @return the changed question
     */
    public FillQuestion holding(Refrigerant refrigerant) {
        return new FillQuestion(
                stamps,
                contents,
                jurisdiction,
                maximumTemperature,
                fillDate,
                Optional.of(refrigerant),
                partialStampsAccepted);
    }

    /**
     * Asks for a calculation with what stamps there are.
     *
     * @return the changed question
     */
    public FillQuestion acceptingPartialStamps() {
        return new FillQuestion(stamps, contents, jurisdiction, maximumTemperature, fillDate, alreadyInside, true);
    }
}

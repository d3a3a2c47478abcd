package org.satline.filling;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Parts;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;

/**
 * What is asked of the fill rules: this cylinder, this refrigerant, this set of rules. Immutable, thread-safe.
 *
 * @param name the cylinder's name
 * @param field the path of the cylinder in a visit file, under which missing stamps are asked for
 * @param stamps the stamps of the cylinder
 * @param contents curves of the refrigerants that are or will be in it, unmixed: one where it is known, the strictest governs where
 *     it may be one of several, none where nothing is known
 * @param jurisdiction the set of rules; the strictest of them governs
 * @param maximumTemperature the warmest temperature that the cylinder may see, T_max, in [-50, 70] degC
 * @param fillDate the day of filling, against which the retest date is held
 * @param alreadyInside the refrigerant that the cylinder holds already, where it is not empty
 * @param provenance where what is or will be in it comes from, where known
 * @param purpose whether it shall be filled, or a number is asked for only
 */
public record FillQuestion(
        String name,
        String field,
        CylinderStamps stamps,
        List<SaturationCurve> contents,
        Jurisdiction jurisdiction,
        Temperature maximumTemperature,
        Optional<LocalDate> fillDate,
        Optional<Refrigerant> alreadyInside,
        Optional<Provenance> provenance,
        Purpose purpose) {
    /** 130 degF, the warmest temperature usually assumed: common practice, no source. */
    public static final Temperature USUAL_MAXIMUM = Temperature.ofFahrenheit(130);

    /** What the answer is for. */
    public enum Purpose {
        /** The cylinder shall be filled: what is missing leaves it open. */
        FILL,
        /** A number is asked for: what is missing is cautioned. */
        CALCULATION
    }

    /** {@inheritDoc} */
    public FillQuestion {
        Parts.required("name field stamps jurisdiction", name, field, stamps, jurisdiction);
        Parts.required("maximumTemperature fillDate alreadyInside", maximumTemperature, fillDate, alreadyInside);
        Parts.required("provenance purpose", provenance, purpose);
        contents = Parts.list("contents", contents);
        checkWarmest(field + ".warmest", maximumTemperature);
    }

    /**
     * Refuses a warmest temperature that no cylinder is filled for.
     *
     * @param field where it stands
     * @param warmest the temperature
     * @throws OutOfValidityException if it is outside [-50, 70] degC
     */
    public static void checkWarmest(String field, Temperature warmest) {
        if (!(warmest.celsius() >= -50 && warmest.celsius() <= 70)) {
            throw OutOfValidityException.of(
                    field, warmest.celsius(), "degC", -50, 70, "the fill rules", "130 degF (54.4 degC) is usual");
        }
    }

    /**
     * Asks with the usual settings: set {@code us}, 130 degF, no date, empty cylinder, to be filled.
     *
     * @param stamps the stamps of the cylinder
     * @param contents curves of what is or will be in it
     * @return the question
     */
    public static FillQuestion of(CylinderStamps stamps, SaturationCurve... contents) {
        Parts.required("contents", (Object) contents);
        return new FillQuestion(
                "cylinder",
                "cylinder",
                stamps,
                List.of(contents),
                FillRules.standard().defaultJurisdiction(),
                USUAL_MAXIMUM,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Purpose.FILL);
    }

    /**
     * Takes another set of rules.
     *
     * @param set the set
     * @return the changed question
     */
    public FillQuestion under(Jurisdiction set) {
        return new FillQuestion(
                name, field, stamps, contents, set, maximumTemperature, fillDate, alreadyInside, provenance, purpose);
    }

    /**
     * Takes another warmest temperature.
     *
     * @param warmest T_max
     * @return the changed question
     */
    public FillQuestion warmestAt(Temperature warmest) {
        return new FillQuestion(
                name, field, stamps, contents, jurisdiction, warmest, fillDate, alreadyInside, provenance, purpose);
    }

    /**
     * States the day of filling.
     *
     * @param date the day
     * @return the changed question
     */
    public FillQuestion on(LocalDate date) {
        Optional<LocalDate> day = Optional.of(date);
        return new FillQuestion(
                name,
                field,
                stamps,
                contents,
                jurisdiction,
                maximumTemperature,
                day,
                alreadyInside,
                provenance,
                purpose);
    }

    /**
     * States what the cylinder holds already, and where its contents come from.
     *
     * @param inside the refrigerant inside
     * @param from its provenance
     * @return the changed question
     */
    public FillQuestion holding(Refrigerant inside, Provenance from) {
        return new FillQuestion(
                name,
                field,
                stamps,
                contents,
                jurisdiction,
                maximumTemperature,
                fillDate,
                Optional.of(inside),
                Optional.of(from),
                purpose);
    }

    /**
     * Asks for a number with what stamps there are.
     *
     * @return the changed question
     */
    public FillQuestion calculating() {
        return new FillQuestion(
                name,
                field,
                stamps,
                contents,
                jurisdiction,
                maximumTemperature,
                fillDate,
                alreadyInside,
                provenance,
                Purpose.CALCULATION);
    }

    /** The rules that govern here. */
    List<FillRule> rules() {
        return jurisdiction.rulesFor(provenance);
    }
}

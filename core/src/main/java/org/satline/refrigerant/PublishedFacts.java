package org.satline.refrigerant;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.satline.quantity.Density;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;

/**
 * Figures printed in the sources of a catalogue entry. They are kept for checks and for the reader; no computation starts from them.
 *
 * @param normalBoilingPoint boiling point of a substance at 101.325 kPa
 * @param bubblePoint bubble point of a blend at 101.325 kPa
 * @param dewPoint dew point of a blend at 101.325 kPa
 * @param azeotropicTemperatures the temperature, or the two ends of the range, at which a blend is azeotropic; empty where none is printed
 * @param criticalTemperature critical temperature of a substance
 * @param criticalPressure critical pressure of a substance
 * @param molarMassGramsPerMole printed molar mass of a blend, g/mol
 * @param ozoneDepletionPotential ODP, R-11 = 1
 * @param lowerFlammabilityLimit LFL as a mass concentration
 * @param gwp global warming potentials, at most one for each assessment report
 * @param tolerances composition tolerances in the order of the components; empty where none are printed
 */
public record PublishedFacts(
        Optional<Temperature> normalBoilingPoint,
        Optional<Temperature> bubblePoint,
        Optional<Temperature> dewPoint,
        List<Temperature> azeotropicTemperatures,
        Optional<Temperature> criticalTemperature,
        Optional<Pressure> criticalPressure,
        OptionalDouble molarMassGramsPerMole,
        OptionalDouble ozoneDepletionPotential,
        Optional<Density> lowerFlammabilityLimit,
        List<GlobalWarmingPotential> gwp,
        List<MassTolerance> tolerances) {
    /** Facts of a user's blend: none. */
    static final PublishedFacts NONE = new PublishedFacts(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            List.of(),
            List.of());

    /** {@inheritDoc} */
    public PublishedFacts {
        Parts.required("normalBoilingPoint bubblePoint dewPoint", normalBoilingPoint, bubblePoint, dewPoint);
        Parts.required("criticalTemperature criticalPressure", criticalTemperature, criticalPressure);
        Parts.required("molarMassGramsPerMole", molarMassGramsPerMole);
        Parts.required("ozoneDepletionPotential", ozoneDepletionPotential);
        Parts.required("lowerFlammabilityLimit", lowerFlammabilityLimit);
        azeotropicTemperatures = Parts.list("azeotropicTemperatures", azeotropicTemperatures);
        gwp = Parts.list("gwp", gwp);
        tolerances = Parts.list("tolerances", tolerances);
    }
}

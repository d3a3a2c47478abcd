package org.satline.cylinder;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.PhaseSplit.Phases;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillAssessor;
import org.satline.filling.FillQuestion;
import org.satline.filling.FillRule;
import org.satline.filling.RuleOutcome.MassLimit;
import org.satline.filling.Samples;
import org.satline.filling.Stamp;
import org.satline.quantity.Mass;
import org.satline.quantity.Temperature;
import org.satline.quantity.Volume;
import org.satline.refrigerant.Catalogue;

class ClosedVesselProperties {
    private static final Catalogue CATALOGUE = Catalogue.standard();
    private static final Map<String, FluidModel> MODELS = new ConcurrentHashMap<>();
    private static final FillAssessor ASSESSOR = FillAssessor.standard();

    @Provide
    Arbitrary<String> gases() {
        return Arbitraries.of("R-22", "R-32", "R-134a", "R-290", "R-407C", "R-410A", "R-454B");
    }

    private static FluidModel model(String gas) {
        return MODELS.computeIfAbsent(gas, name -> FluidModel.of(CATALOGUE.find(name)));
    }

    @Property(tries = 60)
    void pressureRisesWithTemperatureAndTheMassIsAllThere(
            @ForAll("gases") String gas,
            @ForAll @DoubleRange(min = 0.1, max = 0.9) double share,
            @ForAll @DoubleRange(min = -20, max = 50) double celsius,
            @ForAll @DoubleRange(min = 0.5, max = 10) double more) {
        double density =
                share * model(gas).bubbleAtTemperature(273.15).saturated().density();
        ClosedVessel vessel = ClosedVessel.of(model(gas), Volume.ofLitres(20), Mass.ofKilograms(density * 0.020));
        VesselCondition cool = vessel.at(Temperature.ofCelsius(celsius));
        VesselCondition warm = vessel.at(Temperature.ofCelsius(celsius + more));
        assertThat(warm.pressure()).isGreaterThan(cool.pressure());
        assertThat(cool.liquidVolumeFraction().orElseThrow()).isBetween(0.0, 1.0);
        assertThat(cool.vapourMass().kilograms()).isBetween(0.0, density * 0.020 * (1 + 1e-12)); // round-off
    }

    /** The same promise as in FillRuleProperties, here by the phases of the closed vessel. */
    @Property(tries = 40)
    void whatAComputedRuleAllowsLeavesVapourAtItsTemperature(
            @ForAll("gases") String gas, @ForAll @DoubleRange(min = 10, max = 60) double warmest) {
        CylinderStamps stamps = Samples.recovery().with(Stamp.FLAMMABLE_MARK, true);
        FillQuestion question = Samples.question(stamps, gas).warmestAt(Temperature.ofCelsius(warmest));
        for (String name : new String[] {"liquid-80-warmest", "liquid-80-77F", "not-liquid-full-131F"}) {
            FillRule rule = ASSESSOR.rules().rule(name);
            MassLimit limit = (MassLimit) ASSESSOR.assess(question).answers().outcomeOf(rule);
            ClosedVessel vessel = ClosedVessel.of(model(gas), stamps.volume(), limit.maximumContents());
            Temperature at = rule.temperature().orElse(question.maximumTemperature());
            assertThat(vessel.at(at).phases()).isEqualTo(Phases.LIQUID_AND_VAPOUR);
            if (name.startsWith("liquid-80")) {
                assertThat(vessel.at(at).liquidVolumeFraction().orElseThrow()).isLessThanOrEqualTo(0.80);
            }
        }
    }
}

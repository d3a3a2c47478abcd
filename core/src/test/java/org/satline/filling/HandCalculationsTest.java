package org.satline.filling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.satline.filling.Samples.european;
import static org.satline.filling.Samples.question;
import static org.satline.filling.Samples.recovery;

import org.junit.jupiter.api.Test;
import org.satline.filling.RuleOutcome.MassLimit;
import org.satline.quantity.Mass;
import org.satline.quantity.Temperature;

/** The cylinders worked by hand in the README of this module. */
class HandCalculationsTest {
    private static final FillAssessor ASSESSOR = FillAssessor.standard();

    private static MassLimit limit(FillQuestion question, String rule) {
        return (MassLimit)
                ASSESSOR.assess(question).answers().outcomeOf(ASSESSOR.rules().rule(rule));
    }

    /** Trade article on AHRI Guideline K: 957.6 lb with a gravity of 1.197; the equation of state has 0.5 % less. */
    @Test
    void halfTonOfR22() {
        CylinderStamps stamps =
                recovery().with(Stamp.WATER_CAPACITY, Mass.ofPounds(1000)).with(Stamp.TARE, Mass.ofPounds(380));
        assertThat(limit(question(stamps, "R-22"), "liquid-80-77F")
                        .maximumContents()
                        .pounds())
                .isCloseTo(957.6, within(0.005 * 957.6));
    }

    /** Cengel and Boles, table A-11, R-134a at 56 degC: v_l 0.0009317 m3/kg, from another equation: 0.1 %. */
    @Test
    void recoveryCylinderOfR134a() {
        FillQuestion question = question(recovery(), "R-134a").warmestAt(Temperature.ofCelsius(56));
        MassLimit limit = limit(question, "liquid-80-warmest");
        assertThat(limit.maximumContents().kilograms()).isCloseTo(18.56, within(0.001 * 18.56));
        assertThat(limit.maximumContents().plus(recovery().tare()).kilograms()).isCloseTo(30.35, within(0.001 * 18.56));
    }

    /** 49 CFR 173.304a(a)(2), table. */
    @Test
    void ammonia() {
        CylinderStamps stamps = recovery()
                .with(Stamp.SPECIFICATION, CylinderSpecification.parse("DOT-4AA480"))
                .with(Stamp.FLAMMABLE_MARK, true)
                .with(Stamp.WATER_CAPACITY, Mass.ofPounds(100))
                .with(Stamp.TARE, Mass.ofPounds(60));
        assertThat(limit(question(stamps, "R-717"), "filling-density")
                        .maximumContents()
                        .pounds())
                .isCloseTo(54, within(1e-9)); // round-off
    }

    /** ADR 2025, P200, UN 3252, and its rule of 60 degC. */
    @Test
    void europeanReceptacleOfR32() {
        FillQuestion question =
                question(european(48), "R-32").under(ASSESSOR.rules().jurisdiction("adr"));
        assertThat(limit(question, "filling-ratio").maximumContents().kilograms())
                .isCloseTo(20.28, within(1e-9)); // round-off
        MassLimit governing = Samples.governing(ASSESSOR.assess(question));
        assertThat(governing.rule().name()).isEqualTo("not-liquid-full-60C");
        assertThat(governing.maximumContents().kilograms()).isCloseTo(20.1, within(0.05)); // half of the last digit
        assertThat(limit(question, "filling-ratio").cautions()).isNotEmpty();
    }
}

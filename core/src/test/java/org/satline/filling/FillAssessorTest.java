package org.satline.filling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.satline.filling.Samples.against;
import static org.satline.filling.Samples.curve;
import static org.satline.filling.Samples.european;
import static org.satline.filling.Samples.governing;
import static org.satline.filling.Samples.question;
import static org.satline.filling.Samples.recovery;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.equilibrium.FluidModel;
import org.satline.explanation.Finding;
import org.satline.filling.FillRule.Basis;
import org.satline.filling.RuleOutcome.MassLimit;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;

class FillAssessorTest {
    private static final FillAssessor ASSESSOR = FillAssessor.standard();
    private static final FillRules RULES = ASSESSOR.rules();

    private static RuleOutcome outcome(FillQuestion question, String rule) {
        return ASSESSOR.assess(question).answers().outcomeOf(RULES.rule(rule));
    }

    private static double kilograms(FillQuestion question, String rule) {
        return Samples.kilograms(outcome(question, rule)).orElseThrow();
    }

    private static FillQuestion adr(CylinderStamps stamps, String designation) {
        return question(stamps, designation).under(RULES.jurisdiction("adr"));
    }

    /**
     * Worked example in a trade article on AHRI Guideline K: water capacity 1000 lb, R-22 of specific gravity 1.197 at 77 degF, tare
     * 380 lb: 957.6 lb, gross 1337.6 lb. The article's gravity is 0.5 % above that of the equation of state, which gives 1.191 against
     * water at 60 degF, so the limits differ by that much.
     */
    @Test
    void liquidAt77FGivesThePublishedExample() {
        CylinderStamps stamps =
                recovery().with(Stamp.WATER_CAPACITY, Mass.ofPounds(1000)).with(Stamp.TARE, Mass.ofPounds(380));
        MassLimit limit = (MassLimit) outcome(question(stamps, "R-22"), "liquid-80-77F");
        double gravity = curve("R-22").bubbleLiquidDensity(298.15) / 999.0;
        assertThat(gravity).isCloseTo(1.197, within(0.006));
        assertThat(limit.maximumContents().pounds() * 1.197 / gravity).isCloseTo(957.6, within(0.05)); // half a digit
    }

    /** Hand calculation: 0.80 x 47.6 lb x 0.45359237 / 999.0 kg/m3 = 0.0172902 m3 of liquid; times its density at 54.44 degC. */
    @Test
    void liquidAtTheWarmestTemperatureGovernsForR410A() {
        CylinderStamps stamps = recovery();
        FillAssessment assessment = ASSESSOR.assess(question(stamps, "R-410A"));
        assertThat(against(assessment)).isEmpty();
        MassLimit governing = governing(assessment);
        assertThat(governing.rule().name()).isEqualTo("liquid-80-warmest");
        double density = curve("R-410A")
                .bubbleLiquidDensity(Temperature.ofFahrenheit(130).kelvins());
        assertThat(governing.maximumContents().kilograms())
                .isCloseTo(0.0172902 * density, within(1e-3)); // 0.0172902 has six digits
        assertThat(assessment
                        .answers()
                        .limits(EnumSet.of(Basis.LAW))
                        .get(0)
                        .rule()
                        .name())
                .isEqualTo("not-liquid-full-131F");
        assertThat(assessment.answers().limits(EnumSet.of(Basis.PRACTICE))).startsWith(governing);
        assertThat(governing.steps()).hasSize(3);
    }

    /** 49 CFR 173.304a(a)(2), table: R-22 105 % in DOT-4BA240, R-12 119 %, R-152a 79 %, ammonia 54 %, R-744 by cylinder. */
    @ParameterizedTest
    @CsvSource({
        "R-22, DOT-4BA240, 105",
        "R-22, DOT-4BA400, 105",
        "R-12, DOT-4BW260, 119",
        "R-152a, DOT-4BA240, 79",
        "R-717, DOT-4AA480, 54",
        "R-744, DOT-3AA1800, 68",
        "R-744, DOT-3AA2015, 70.3",
        "R-744, DOT-3AA2265, 73.2",
        "R-744, DOT-3AA2400, 74.5",
    })
    void fillingDensitiesArePrinted(String designation, String mark, double percent) {
        CylinderStamps stamps = recovery()
                .with(Stamp.SPECIFICATION, CylinderSpecification.parse(mark))
                .with(Stamp.FLAMMABLE_MARK, true)
                .with(Stamp.WATER_CAPACITY, Mass.ofKilograms(20));
        assertThat(kilograms(question(stamps, designation), "filling-density"))
                .isCloseTo(20 * percent / 100, within(1e-9)); // round-off
    }

    @Test
    void aCylinderThatTheTableDoesNotNameIsRefused() {
        CylinderStamps stamps = recovery().with(Stamp.SPECIFICATION, CylinderSpecification.parse("DOT-4BA225"));
        assertThat(against(ASSESSOR.assess(question(stamps, "R-22")))).contains(FillingCode.NOT_LISTED);
    }

    /** 49 CFR 173.301a(c): R-410A has about 481 psig at 131 degF, so 385 psi are needed: 400 is enough, 350 is not. */
    @Test
    void fiveQuartersOfTheServicePressure() {
        CylinderStamps weak = recovery().with(Stamp.SPECIFICATION, CylinderSpecification.parse("DOT-4BA350"));
        FillAssessment refused = ASSESSOR.assess(question(weak, "R-410A"));
        assertThat(against(refused)).containsExactly(FillingCode.PRESSURE_TOO_LOW);
        // what must not be filled has no limit to fill to; what the rules say of its volume is still listed
        assertThat(refused).isInstanceOf(FillAssessment.Refused.class);
        List<MassLimit> listed = refused.answers().limits(EnumSet.allOf(Basis.class));
        assertThat(listed)
                .isEqualTo(ASSESSOR.assess(question(recovery(), "R-410A"))
                        .answers()
                        .limits(EnumSet.allOf(Basis.class)))
                .isSortedAccordingTo(Comparator.comparing(MassLimit::maximumContents));
        RuleOutcome.PressureTest passed =
                (RuleOutcome.PressureTest) outcome(question(recovery(), "R-410A"), "service-pressure-131F");
        assertThat(passed.passed()).isTrue();
        // an installation manual prints 475.6 psig at 130 degF and 445.9 at 125, so 481.5 at 131; it and the mixture
        // equation differ by
        // less than 1 % there
        assertThat(passed.margin().psi()).isCloseTo(1.25 * 400 - 481.5, within(4.8));
    }

    @Test
    void aCylinderNamedByTheTableFollowsTheTable() {
        CylinderStamps stamps = recovery().with(Stamp.SPECIFICATION, CylinderSpecification.parse("DOT-4BA240"));
        assertThat(outcome(question(stamps, "R-22"), "service-pressure-131F"))
                .isInstanceOf(RuleOutcome.NotApplicable.class);
        assertThat(against(ASSESSOR.assess(question(stamps, "R-22")))).isEmpty();
    }

    /** 49 CFR 173.304a(d)(1): specific gravity 0.504 to 0.510 42 %, 0.561 to 0.568 49 %; propane 0.508 and isobutane 0.563 at 60 degF. */
    @ParameterizedTest
    @CsvSource({"R-290, 42", "R-600a, 49"})
    void petroleumGasByItsGravity(String designation, double percent) {
        CylinderStamps stamps =
                recovery().with(Stamp.FLAMMABLE_MARK, true).with(Stamp.WATER_CAPACITY, Mass.ofKilograms(20));
        assertThat(kilograms(question(stamps, designation), "lpg-filling-density"))
                .isCloseTo(20 * percent / 100, within(1e-9)); // round-off
        assertThat(outcome(question(stamps, "R-32"), "lpg-filling-density"))
                .isInstanceOf(RuleOutcome.NotApplicable.class);
    }

    /** ADR 2025, 4.1.4.1, P200 table 2. */
    @ParameterizedTest
    @CsvSource({
        "R-134a, 18, 1.05",
        "R-22, 27, 1.03",
        "R-32, 48, 0.78",
        "R-404A, 36, 0.82",
        "R-407C, 30, 0.95",
        "R-125, 35, 0.87",
        "R-125, 48, 0.87",
        "R-125, 49, 0.95",
        "R-744, 190, 0.68",
        "R-744, 250, 0.76",
        "R-290, 23, 0.43",
        "R-717, 29, 0.54",
    })
    void fillingRatiosArePrinted(String designation, double testPressureBar, double ratio) {
        CylinderStamps stamps = european(testPressureBar);
        assertThat(kilograms(adr(stamps, designation), "filling-ratio"))
                .isCloseTo(26 * ratio, within(1e-9)); // round-off
    }

    @Test
    void aTestPressureBelowTheRowIsRefused() {
        FillAssessment assessment = ASSESSOR.assess(adr(european(17), "R-134a"));
        assertThat(against(assessment)).contains(FillingCode.TEST_PRESSURE_TOO_LOW);
    }

    /** R-410A has no entry: UN 3163, the formulas of P200(5)(c): the least of 0.95 rho_l(50 degC) V and rho_l(60 degC) V. */
    @Test
    void aGasWithoutEntryFollowsTheFormulas() {
        CylinderStamps stamps = european(48);
        FillAssessment assessment = ASSESSOR.assess(adr(stamps, "R-410A"));
        assertThat(against(assessment)).isEmpty();
        double volume = 26 / 999.0;
        double at50 = 0.95 * curve("R-410A").bubbleLiquidDensity(323.15) * volume;
        double at60 = curve("R-410A").bubbleLiquidDensity(333.15) * volume;
        double formula = kilograms(adr(stamps, "R-410A"), "low-pressure-formula");
        assertThat(governing(assessment).maximumContents().kilograms())
                .isCloseTo(Math.min(Math.min(at50, at60), formula), within(1e-6)); // strictness share 1e-9
        assertThat(outcome(adr(stamps, "R-410A"), "filling-ratio")).isInstanceOf(RuleOutcome.NotApplicable.class);
    }

    /** ADR P200(5)(c): test pressure at least p(65 degC) less 1 bar, and at least 10 bar. */
    @Test
    void testPressureRules() {
        FillAssessment weak = ASSESSOR.assess(adr(european(30), "R-410A"));
        assertThat(against(weak)).contains(FillingCode.PRESSURE_TOO_LOW);
        FillAssessment tooWeak = ASSESSOR.assess(adr(european(8), "R-600a"));
        assertThat(against(tooWeak)).contains(FillingCode.PRESSURE_TOO_LOW);
    }

    /** R-125 at 0.95 kg/L: its liquid at 60 degC is lighter than that, so the printed figure fills the cylinder below 60 degC. */
    @Test
    void aPrintedRatioThatFillsTheCylinderIsFlagged() {
        MassLimit limit = (MassLimit) outcome(adr(european(49), "R-125"), "filling-ratio");
        assertThat(limit.cautions()).extracting(Finding::code).contains(FillingCode.TABLE_FILLS_WITH_LIQUID);
    }

    @Test
    void aPortableTankFollowsT50() {
        CylinderStamps stamps =
                european(30).with(Stamp.SPECIFICATION, CylinderSpecification.parse("portable tank T50"));
        // ADR 2025, 4.2.5.2.6: R-134a 1.04 kg per litre of shell
        assertThat(kilograms(adr(stamps, "R-134a"), "tank-filling")).isCloseTo(1040 * 26 / 999.0, within(1e-9));
        assertThat(outcome(adr(stamps, "R-134a"), "filling-ratio")).isInstanceOf(RuleOutcome.NotApplicable.class);
        assertThat(outcome(adr(european(30), "R-134a"), "tank-filling")).isInstanceOf(RuleOutcome.NotApplicable.class);
        assertThat(kilograms(adr(stamps, "R-410A"), "tank-filling")).isPositive();
    }

    @Test
    void noLiquidNoLiquidRule() {
        CylinderStamps stamps = recovery().with(Stamp.SPECIFICATION, CylinderSpecification.parse("DOT-3AA1800"));
        RuleOutcome outcome = outcome(question(stamps, "R-744"), "liquid-80-warmest");
        assertThat(outcome)
                .isInstanceOfSatisfying(
                        RuleOutcome.NotApplicable.class,
                        none -> assertThat(none.reason()).isEqualTo(RuleOutcome.Reason.NO_LIQUID));
        FillAssessment assessment = ASSESSOR.assess(question(stamps, "R-744"));
        assertThat(governing(assessment).rule().name()).isEqualTo("filling-density");
        assertThat(against(assessment)).isEmpty();
    }

    /** The 80 % of the water capacity is 80 % of no liquid lighter than water: arithmetic. */
    @Test
    void theOlderRuleIsFlaggedForLightLiquids() {
        CylinderStamps stamps = recovery().with(Stamp.FLAMMABLE_MARK, true);
        MassLimit limit = (MassLimit) outcome(question(stamps, "R-32"), "water-80");
        assertThat(limit.maximumContents().pounds()).isCloseTo(0.8 * 47.6, within(1e-9)); // round-off
        assertThat(limit.cautions()).isNotEmpty();
    }

    @Test
    void candidatesGiveTheStrictestLimit() {
        CylinderStamps stamps = recovery();
        FillAssessment both = ASSESSOR.assess(
                FillQuestion.of(stamps, curve("R-22"), curve("R-410A")).on(Samples.TODAY));
        assertThat(governing(both).maximumContents())
                .isEqualTo(
                        governing(ASSESSOR.assess(question(stamps, "R-410A"))).maximumContents());
    }

    @Test
    void unknownContentsHaveNoLimit() {
        FillAssessment assessment = ASSESSOR.assess(FillQuestion.of(recovery()).on(Samples.TODAY));
        assertThat(assessment).isInstanceOf(FillAssessment.Refused.class);
        assertThat(against(assessment)).containsExactly(FillingCode.CONTENTS_UNKNOWN);
    }

    @Test
    void missingPressuresAreAskedForOrCautioned() {
        CylinderStamps bare = CylinderStamps.of(Mass.ofPounds(26), Mass.ofPounds(47.6));
        FillQuestion question = question(bare, "R-410A");
        assertThat(ASSESSOR.assess(question))
                .isInstanceOfSatisfying(
                        FillAssessment.Open.class,
                        open -> assertThat(open.missing())
                                .extracting(each -> each.subject().name())
                                .contains("cylinder.servicePressure", "cylinder.refillable", "cylinder.retestDue"));
        FillAssessment lenient = ASSESSOR.assess(question.calculating());
        assertThat(lenient).isInstanceOf(FillAssessment.Allowed.class);
        assertThat(lenient.answers().cautions())
                .extracting(Finding::code)
                .contains(FillingCode.RULE_NOT_TESTED, FillingCode.STAMP_NOT_TESTED);
        FillQuestion european = question.calculating().under(RULES.jurisdiction("adr"));
        assertThat(ASSESSOR.assess(european)).isInstanceOf(FillAssessment.Allowed.class);
    }

    /**
     * 4BA cylinder of test pressure 42 bar, R-22 (P200: 1.03, from 27 bar): new gas by the table or the formulas, recovered gas by the 80 %
     * practice as well; 149 degF (65 degC) allows less than 130 degF.
     */
    @Test
    void recoveredContentsKeepThePracticeUnderAnySet() {
        CylinderStamps stamps = recovery().with(Stamp.TEST_PRESSURE, GaugePressure.ofBars(42));
        FillQuestion question = adr(stamps, "R-22");
        double unused = governing(ASSESSOR.assess(question)).maximumContents().kilograms();
        FillQuestion recovered = question.holding(curve("R-22").refrigerant(), Provenance.RECOVERED);
        MassLimit limit = governing(ASSESSOR.assess(recovered));
        assertThat(limit.rule().name()).isEqualTo("liquid-80-warmest");
        assertThat(limit.maximumContents().kilograms()).isLessThan(unused);
        MassLimit warm = governing(ASSESSOR.assess(recovered.warmestAt(Temperature.ofFahrenheit(149))));
        assertThat(warm.maximumContents().kilograms())
                .isLessThan(limit.maximumContents().kilograms());
    }

    /** A stated warmest temperature above that of the rule stands in its place: R-410A at 70 degC presses above 42 bar less 1. */
    @Test
    void aWarmerPlaceThanTheRuleKnowsCounts() {
        CylinderStamps stamps = european(42.6);
        assertThat(against(ASSESSOR.assess(adr(stamps, "R-410A")))).isEmpty();
        assertThat(against(ASSESSOR.assess(adr(stamps, "R-410A").warmestAt(Temperature.ofCelsius(70)))))
                .contains(FillingCode.PRESSURE_TOO_LOW);
    }

    @Test
    void rulesAreFoundByName() {
        assertThat(RULES.rule(" Liquid-80-77f ").name()).isEqualTo("liquid-80-77F");
        assertThatThrownBy(() -> RULES.rule("liquid-90")).hasMessageContaining("liquid-80-warmest");
        assertThatThrownBy(() -> RULES.jurisdiction("mars")).hasMessageContaining("us, adr");
        assertThat(RULES.all()).allSatisfy(rule -> {
            assertThat(rule.citation()).isNotBlank();
            assertThat(rule.inequality()).containsAnyOf("<=", "<", ">=");
        });
    }

    @Test
    void theWarmestTemperatureStaysOnEarth() {
        FillQuestion question = question(recovery(), "R-410A");
        assertThatThrownBy(() -> question.warmestAt(Temperature.ofCelsius(90))).hasMessageContaining("[-50");
        RuleOutcome cool = outcome(question.warmestAt(Temperature.ofFahrenheit(100)), "liquid-80-warmest");
        assertThat(((MassLimit) cool).cautions()).isNotEmpty();
    }

    @Test
    void aMassRatingGivesTheMotorVehicleRule() {
        CylinderStamps stamps = recovery()
                .with(Stamp.MASS_RATING, Mass.ofPounds(30))
                .with(Stamp.SERVICE_PRESSURE, GaugePressure.ofPsig(400));
        // 40 CFR 82 subpart B appendix A: 60 % of the rating
        assertThat(kilograms(question(stamps, "R-134a"), "rating-60"))
                .isCloseTo(Mass.ofPounds(18).kilograms(), within(1e-9)); // round-off
        assertThat(outcome(question(recovery(), "R-134a"), "rating-60")).isInstanceOf(RuleOutcome.NotApplicable.class);
    }

    /** R-23 has no liquid at 131 degF (critical point 26 degC): the settled pressure at the contents allowed is 1.25 x 1800 psig. */
    @Test
    void aboveTheCriticalTemperatureThePressureGivesTheMass() {
        CylinderStamps stamps = recovery().with(Stamp.SPECIFICATION, CylinderSpecification.parse("DOT-3AA1800"));
        FillAssessment assessment = ASSESSOR.assess(question(stamps, "R-23"));
        assertThat(against(assessment)).isEmpty();
        MassLimit governing = governing(assessment);
        assertThat(governing.rule().name()).isEqualTo("service-pressure-131F");
        double density =
                governing.maximumContents().kilograms() / stamps.volume().cubicMetres();
        double pascals = FluidModel.of(curve("R-23").refrigerant())
                .states()
                .atTemperatureAndDensity(Temperature.ofCelsius(55).kelvins(), density)
                .pressurePa();
        assertThat(Pressure.ofPascals(pascals).psia()).isCloseTo(1.25 * 1800 + 14.696, within(0.01));
    }

    /** R-1132a stands in the table of P200 at 250 bar only; R-23 at 190 and 250: no formula of P200(5)(b) for gases with an entry. */
    @Test
    void formulaForHighPressureGasesWithoutAnEntry() {
        assertThat(outcome(adr(european(190), "R-23"), "high-pressure-formula"))
                .isInstanceOf(RuleOutcome.NotApplicable.class);
        RuleOutcome methane = outcome(adr(european(190), "R-50"), "settled-pressure-15C");
        assertThat(Samples.kilograms(methane)).isPresent();
    }
}

package org.satline.duty;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Subject;
import org.satline.quantity.Mass;
import org.satline.refrigerant.GlobalWarmingPotential;
import org.satline.refrigerant.Refrigerant;

/**
 * What a leak asks for: the test, the rate from which the law wants it mended, and when to look again. Which law holds depends on the
 * place, which is not known here: each that may hold is told.
 *
 * @param system the name of the system that leaks
 * @param refrigerant what is in it
 * @param fullCharge the charge of its plate, where it is known
 * @param use what it is used for
 */
record LeakDuties(String system, Refrigerant refrigerant, Optional<Mass> fullCharge, LeakRate.Use use) {
    /** Above it 40 CFR 84.106 holds; every gas of Annex I of Regulation (EU) 2024/573 in use as a refrigerant lies above it too. */
    private static final double LEAST_POTENTIAL = 53;

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        Subject subject = Subject.system(system);
        findings.add(Finding.of(Severity.CAUTION, LeakCode.LEAK_TEST, subject));
        fullCharge.ifPresent(charge -> {
            rule().flatMap(rule -> LeakRate.rollingAverage(Mass.ZERO, charge).against(rule, use))
                    .ifPresent(trigger -> findings.add(Finding.of(
                                    Severity.CAUTION,
                                    LeakCode.LEAK_RATE_LIMIT,
                                    subject,
                                    Figure.of("limit", trigger.triggerPercent() / 100, "1"),
                                    Figure.of(
                                            "amount",
                                            Mass.ofKilograms(charge.kilograms() * trigger.triggerPercent() / 100)))
                            .citing(trigger.citation())));
            potential()
                    .filter(each -> !isOzoneDepleting())
                    .flatMap(each -> LeakCheckInterval.byCarbonDioxideEquivalent(charge, each, false)
                            .months())
                    .ifPresent(months -> findings.add(Finding.of(
                                    Severity.CAUTION,
                                    LeakCode.LEAK_CHECK_DUE,
                                    subject,
                                    Figure.of("months", months, "1"))
                            .citing("Regulation (EU) 2024/573 art. 5 (from memory)")));
        });
        return findings;
    }

    private Optional<LeakRate.Rule> rule() {
        if (isOzoneDepleting()) {
            return Optional.of(LeakRate.Rule.OZONE_DEPLETING);
        }
        return potential().map(unused -> LeakRate.Rule.HFC_AND_SUBSTITUTES);
    }

    private boolean isOzoneDepleting() {
        return refrigerant.ozoneDepletionPotential().orElse(0) > 0;
    }

    private Optional<Double> potential() {
        return refrigerant
                .gwp(GlobalWarmingPotential.Report.AR4)
                .map(GlobalWarmingPotential::value)
                .filter(each -> each > LEAST_POTENTIAL);
    }
}

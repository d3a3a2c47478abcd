/**
 * A tour of the library: from what stands on a gauge, a thermometer and a cylinder to superheat, a verdict and a fill limit.
 *
 * <pre>{@code
 * SaturationCurve curve = SaturationCurves.of(Catalogue.standard().find("R-410A")); // keep it: making one costs milliseconds
 * Atmosphere site = Atmosphere.atAltitude(Length.ofMetres(310));
 * Pressure suction = Pressure.parse("118 psig", site);
 * Temperature line = Temperature.parse("53 degF");
 * TemperatureDifference superheat = curve.superheat(suction, line);
 *
 * SystemReadings readings = SystemReadings.builder()
 *         .suction(Reading.of(suction, 3_000, "suction gauge"), Reading.of(line, 0.3, "suction clamp"))
 *         .liquid(
 *                 Reading.of(Pressure.parse("364 psig", site), 5_000, "liquid gauge"),
 *                 Reading.of(Temperature.parse("94 degF"), 0.3, "liquid clamp"))
 *         .put(Place.OUTDOOR_AIR, Reading.of(Temperature.parse("88 degF"), 0.5, "outdoor thermometer"))
 *         .build();
 * ChargeQuestion question = ChargeQuestion.of(
 *         MeteringDevice.EXPANSION_VALVE, Optional.of(TemperatureDifference.parse("10 degF")));
 * Judgement judgement = ChargeJudge.usual()
 *         .judge(new ChargeCase(curve, readings, question, OperatingConditions.unknown()));
 * if (judgement instanceof Judgement.Decided decided) {
 *     System.out.println(decided.level() + ", " + decided.probability());
 * } else {
 *     judgement.evidence().findings().forEach(System.out::println); // why there is none
 * }
 *
 * CylinderStamps stamps = CylinderStamps.of(Mass.ofPounds(26), Mass.ofPounds(47.6))
 *         .with(Stamp.SPECIFICATION, CylinderSpecification.parse("DOT-4BA400"))
 *         .with(Stamp.RETEST_DUE, LocalDate.of(2029, 4, 30));
 * FillQuestion fill = FillQuestion.of(stamps, curve)
 *         .on(LocalDate.of(2026, 7, 14))
 *         .warmestAt(Temperature.parse("130 degF"));
 * if (FillAssessor.standard().assess(fill) instanceof FillAssessment.Allowed allowed) {
 *     System.out.println(allowed);
 * }
 * }</pre>
 *
 * <p>One refrigerant, one system, one cylinder: {@link org.satline.refrigerant}, {@link org.satline.saturation},
 * {@link org.satline.measurement}, {@link org.satline.charge}, {@link org.satline.filling}, {@link org.satline.cylinder}. A whole service
 * visit with its next steps: {@link org.satline.visit}, with {@link org.satline.duty}, {@link org.satline.transfer},
 * {@link org.satline.step} and {@link org.satline.ledger}. A million rows: {@link org.satline.charge.ChargeScreen} and
 * {@link org.satline.saturation.SaturationLines#superheats}. Data of your own: {@link org.satline.refrigerant.Catalogue#with},
 * {@link org.satline.equation.EquationLibrary#with}, {@link org.satline.saturation.PrintedCard},
 * {@link org.satline.saturation.SaturationCurveProvider}. Results for other programs and people: {@link org.satline.json.SatlineJson},
 * {@link org.satline.wording.Wording}. Another calculator's answers: {@link org.satline.audit.Auditor}. Practice and proof:
 * {@link org.satline.simulation.SimulatedSystem}.
 *
 * <p>What comes with them:
 *
 * <ul>
 *   <li>states beyond saturation: {@link org.satline.equilibrium.FluidModel}, its {@link org.satline.equilibrium.PhaseLines} to their
 *       {@link org.satline.equilibrium.CriticalPoint}, {@link org.satline.equilibrium.CriticalLocus} of two components, and what leaking or
 *       charging makes of a blend, {@link org.satline.equilibrium.Withdrawal}; many saturated properties at once,
 *       {@link org.satline.saturation.SaturationQuantities};
 *   <li>how far to trust a refrigerant: {@link org.satline.refrigerant.PublishedFacts}, {@link org.satline.equation.KnownDifference}, and
 *       for an equation of your own {@link org.satline.equilibrium.EquationTrial};
 *   <li>why a judgement is what it is: {@link org.satline.charge.belief.Weighed} with each
 *       {@link org.satline.charge.belief.WeighedChoice}, the {@link org.satline.charge.margin.DecidingInstrument}, airflow by
 *       {@link org.satline.charge.TargetTemperatureSplit}; why a screened row has no level, {@link org.satline.charge.ScreenReason};
 *   <li>why a cylinder is not what its stamps say, {@link org.satline.cylinder.ContentsFinding}; what each act of a plan does and breaks,
 *       {@link org.satline.transfer.simulator.Effects} and {@link org.satline.transfer.simulator.Violation};
 *   <li>how deep to evacuate before work, {@link org.satline.duty.EvacuationLevels} by {@link org.satline.duty.ApplianceClass}; the book of
 *       every gram on a disk, {@link org.satline.ledger.LedgerFile}, which gives a {@link org.satline.ledger.LedgerReading};
 *   <li>forms for an {@code ObjectMapper} of the program, {@link org.satline.json.SatlineModule}; what an audit compares,
 *       {@link org.satline.audit.answer.AuditedQuantity}.
 * </ul>
 *
 * <p>Every exception that the library defines is a {@link org.satline.SatlineException}, which says whose turn it is, such as
 * {@link org.satline.equilibrium.TwoPhaseStateException}, {@link org.satline.equilibrium.SolidStateException},
 * {@link org.satline.equilibrium.TwoLiquidsException} and {@link org.satline.json.UnreadableJsonException}. Every verdict and fill
 * assessment carries the {@link org.satline.refrigerant.DataVersion} of the figures it was made with.
 *
 * <p>This package is stable from the first release on. Each other package says whether it is stable or experimental. It
 * computes and advises; it does not replace licensed practice.
 */
@NullMarked
package org.satline;

import org.jspecify.annotations.NullMarked;

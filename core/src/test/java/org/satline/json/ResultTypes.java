package org.satline.json;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.satline.CoreClasses;

/** The public types of core, found in its class files, and those of them that hold no result. */
final class ResultTypes {
    /** Public types without a form, each with the reason. Whatever is not named here must have one. */
    static final Set<String> WITHOUT_FORM = Set.of(
            // they compute or look up
            "audit.AuditSource",
            "audit.Auditor",
            "audit.answer.AnswerUnit",
            "audit.answer.AuditCase",
            "audit.answer.AuditCase.Expected",
            "audit.answer.AuditCase.Neighbours",
            "audit.answer.Comparer",
            "audit.answer.Heard",
            "audit.answer.Question",
            "audit.cause.CauseFinder",
            "audit.cause.Findings",
            "audit.cause.Findings.Finding",
            "audit.cause.RowSample",
            "charge.ChargeJudge",
            "charge.ChargeScreen",
            "charge.TargetTemperatureSplit",
            "cylinder.ClosedVessel",
            "cylinder.CylinderCheck",
            "cylinder.CylinderCheck.Memory",
            "cylinder.RoomFinder",
            "duty.EvacuationLevels",
            "duty.TransferRules",
            // exceptions are thrown and not kept
            "SatlineException",
            "equation.EquationLibrary",
            "equation.FixedComposition",
            "equation.HelmholtzEquation",
            "equation.MixtureEquation",
            "equation.PureEquation",
            "equilibrium.FluidModel",
            "equilibrium.PhaseLines",
            "equilibrium.StateFinder",
            "equilibrium.Withdrawal",
            "filling.FillAssessor",
            "filling.FillRules",
            "json.JsonFields",
            "json.SatlineJson",
            "json.SatlineModule",
            "measurement.StandardUncertainty",
            "quantity.Parts",
            "quantity.PlainText",
            "refrigerant.Catalogue",
            "resource.CsvResource",
            "resource.CsvResource.Row",
            "resource.OnDemand",
            "resource.PrintedGrid",
            "resource.SealedResources",
            "resource.TextResource",
            "safety.Cautions",
            "saturation.SaturationCurveProvider",
            "saturation.SaturationCurves",
            "saturation.SaturationUncertainty",
            "simulation.SimulatedSystem",
            "simulation.WorkingFluid",
            "step.StepAdvisor",
            "transfer.FlowCheck",
            "transfer.planner.HookUpPlanner",
            "transfer.simulator.HookUpSimulator",
            "transfer.transition.PlanHand",
            "transfer.transition.PlanMove",
            "transfer.transition.PlanParts",
            "transfer.transition.PlanState",
            "transfer.PermitOffice",
            "visit.file.ReportFields",
            "visit.file.VisitFile",
            "visit.SystemDanger",
            "visit.VisitReporter",
            "wording.NumberPrinter",
            "wording.VisitLines",
            "wording.Wording",
            // what a saturation curve answers, and the curve has a form
            "saturation.SaturationLines",
            "saturation.SaturationNumbers",
            "saturation.SaturationQuantities",
            // what a code or a text is, written where it is met
            "explanation.Coded",
            // by itself it is a constant of its own type; within a finding it is written with its room
            "explanation.FindingCode",
            "quantity.Quantity",
            // the gas of a network is computed as it is asked for, and the network holds it
            "transfer.hookup.GasLaw",
            "transfer.hookup.GasProperties",
            "transfer.hookup.HookUp",
            "transfer.hookup.HookUpGas",
            // plain fields are JSON themselves, by JsonFields
            "visit.file.FieldValue",
            "visit.file.FieldValue.Fields",
            "visit.file.FieldValue.Flag",
            "visit.file.FieldValue.Items",
            "visit.file.FieldValue.Nothing",
            "visit.file.FieldValue.Plain",
            "visit.file.FieldValue.Text",
            // they are filled step by step
            "equation.PartialDensityDerivatives",
            "equation.ReducedHelmholtz",
            "ledger.Ledger",
            "ledger.LedgerFile",
            "measurement.SystemReadings.Builder",
            // rows and columns of a service's own, which keeps them in forms of its own
            "charge.ChargeRow",
            "charge.ChargeRow.Builder",
            "saturation.BulkAnswers",
            // a card of the caller's own, who keeps its points
            "saturation.PrintedCard",
            // its entries have forms; it holds the ledger made from them
            "ledger.LedgerReading",
            // made for the next computation and not public inside
            "step.LineCharge.Filling",
            // a choice to make before computing, with values of its own
            "equilibrium.ReferenceState",
            "wording.Language");

    private static final List<Class<?>> PUBLIC = found(); // reading the class files takes a second

    private ResultTypes() {}

    /** Every public type of core that must have a form, by name. */
    static List<Class<?>> all() {
        return publicTypes().stream()
                .filter(type -> !WITHOUT_FORM.contains(SchemaWriter.name(type)))
                .toList();
    }

    /** Every public type of core but exceptions. */
    static List<Class<?>> publicTypes() {
        return PUBLIC;
    }

    private static List<Class<?>> found() {
        return CoreClasses.all().stream()
                .filter(ResultTypes::isPublic)
                .filter(type -> !type.isAssignableTo(Throwable.class) && !type.isAnnotation())
                .sorted(Comparator.comparing(JavaClass::getName))
                .<Class<?>>map(JavaClass::reflect)
                .toList();
    }

    private static boolean isPublic(JavaClass type) {
        return type.getModifiers().contains(JavaModifier.PUBLIC)
                && !type.getSimpleName().equals("package-info")
                && !type.isAnonymousClass()
                && type.getEnclosingClass().map(ResultTypes::isPublic).orElse(true);
    }
}

package org.satline.visit;

import java.util.List;
import java.util.Optional;
import org.satline.cylinder.ClosedVessel;
import org.satline.cylinder.ContentsCheck;
import org.satline.cylinder.ContentsFinding;
import org.satline.cylinder.VesselCondition;
import org.satline.duty.Holder;
import org.satline.duty.Holder.Kind;
import org.satline.duty.Holder.Provenance;
import org.satline.duty.TransferRules;
import org.satline.equilibrium.FluidModel;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Mass;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** Works out what is to know about the cylinder that is hooked up: what it holds, how it warms, whose it is, and its hoses. */
final class HookUpReports {
    /** What stands in the cylinders of the trade; common practice, no source. */
    private static final List<String> IN_CYLINDERS = List.of(
            "R-22",
            "R-32",
            "R-134a",
            "R-404A",
            "R-407A",
            "R-407C",
            "R-410A",
            "R-448A",
            "R-449A",
            "R-452B",
            "R-454B",
            "R-507A",
            "R-1234yf",
            "R-290",
            "R-600a");
    /** Freezing, 70 degF, a hot day, and the 131 degF of the fill rules, degC. */
    private static final List<Double> MET = List.of(0.0, 21.1, 40.0, 55.0);

    private static final String NOT_STATED = "an owner not stated";

    private HookUpReports() {}

    static HookUpReport of(VisitInput input, CylinderOnSite cylinder, SaturationCurve systemCurve) {
        // by an impossible weight nothing can be computed, and a label that fits its pressure proves nothing
        boolean brimful = WeightDoubts.isBrimful(cylinder, Flows.curve(cylinder.holding(), systemCurve))
                && cylinder.holding().isPresent();
        return new HookUpReport(
                cylinder,
                brimful ? Optional.empty() : contents(cylinder),
                brimful ? Optional.empty() : vessel(cylinder, input.site().atmosphere()),
                HosePurges.of(input, cylinder, systemCurve),
                rules(input.system(), cylinder),
                cylinder.receives()
                        ? List.of()
                        : SourceDoubts.of(cylinder, systemCurve, input.site().atmosphere()));
    }

    private static Optional<ContentsFinding> contents(CylinderOnSite cylinder) {
        Optional<Pressure> pressure = cylinder.pressure().filter(found -> found.pascals() > 0);
        if (pressure.isEmpty() || cylinder.holding().isEmpty()) {
            return Optional.empty();
        }
        SaturationCurve label = SaturationCurves.of(cylinder.holding().get());
        if (!cylinder.isOn(label)) {
            return Optional.empty();
        }
        Catalogue catalogue = Catalogue.standard();
        return Optional.of(ContentsCheck.check(
                label,
                IN_CYLINDERS.stream()
                        .map(catalogue::find)
                        .map(SaturationCurves::of)
                        .toList(),
                cylinder.contentsReading(pressure.get())));
    }

    private static Optional<VesselReport> vessel(CylinderOnSite cylinder, Atmosphere site) {
        if (cylinder.holding().isEmpty() || cylinder.weighedContents().isEmpty()) {
            return Optional.empty();
        }
        Mass contents = cylinder.weighedContents().get();
        ClosedVessel vessel = ClosedVessel.of(
                FluidModel.of(cylinder.holding().get()), cylinder.stamps().volume(), contents);
        Optional<Pressure> mark = cylinder.stamps().servicePressure().map(gauge -> Pressure.ofGauge(gauge, site));
        return condition(vessel, cylinder.temperature(), mark)
                .map(now -> new VesselReport(
                        contents, now, warmer(vessel, mark), vessel.liquidFull(), mark.map(vessel::reaches)));
    }

    private static List<VesselCondition> warmer(ClosedVessel vessel, Optional<Pressure> mark) {
        return MET.stream()
                .flatMap(celsius -> condition(vessel, Temperature.ofCelsius(celsius), mark).stream())
                .toList();
    }

    /** Nothing where the equation does not reach: a liquid-full cylinder soon leaves its range of pressure, and close to the critical point it tells none. */
    private static Optional<VesselCondition> condition(
            ClosedVessel vessel, Temperature temperature, Optional<Pressure> mark) {
        try {
            return Optional.of(vessel.at(temperature, mark));
        } catch (OutOfValidityException e) {
            return Optional.empty();
        }
    }

    private static List<TransferRules.Finding> rules(ServicedSystem system, CylinderOnSite cylinder) {
        Optional<Refrigerant> inSystem = Optional.of(system.refrigerant());
        String owner = system.owner().orElse(NOT_STATED + " (system)");
        String cylinderOwner = cylinder.owner().orElse(NOT_STATED + " (cylinder)");
        if (cylinder.receives()) {
            return TransferRules.standard()
                    .check(
                            new Holder(Kind.SYSTEM, owner, inSystem, Provenance.RECOVERED),
                            new Holder(
                                    Kind.RECOVERY_CYLINDER,
                                    cylinderOwner,
                                    cylinder.holding(),
                                    cylinder.provenance().orElse(Provenance.RECOVERED)));
        }
        Provenance provenance = cylinder.provenance().orElse(Provenance.NEW);
        boolean used = provenance == Provenance.RECOVERED || provenance == Provenance.MIXED_RECOVERED;
        return TransferRules.standard()
                .check(
                        new Holder(
                                used ? Kind.RECOVERY_CYLINDER : Kind.SOURCE_CYLINDER,
                                cylinderOwner,
                                cylinder.holding(),
                                provenance),
                        new Holder(Kind.SYSTEM, owner, inSystem, Provenance.RECOVERED));
    }
}

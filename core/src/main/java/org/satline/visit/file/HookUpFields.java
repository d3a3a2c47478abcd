package org.satline.visit.file;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.satline.quantity.Length;
import org.satline.transfer.PointKind;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.GasOrigin;
import org.satline.transfer.hookup.Hose;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.hookup.VolumeContent;
import org.satline.visit.HookUpFacts;
import org.satline.visit.HookUpFacts.HoseOnSite;
import org.satline.visit.HookUpFacts.HosePort;
import org.satline.visit.HookUpFacts.ManifoldOnSite;

/** Reads what is said about hoses, manifold, ports, pump and recovery machine. */
final class HookUpFields {
    static final List<String> MANIFOLD = List.of("valves", "holds");
    static final List<String> PORT = List.of("fitting");
    static final List<String> HOSE =
            List.of("port", "systemEnd", "cylinderEnd", "bore", "length", "holds", "contentsFrom");
    /** Ports of a system that a hose can hang on. */
    static final Map<String, PointKind> PORTS = Map.of(
            "high-side-liquid", PointKind.HIGH_SIDE_LIQUID_PORT,
            "high-side-vapour", PointKind.HIGH_SIDE_VAPOUR_PORT,
            "low-side", PointKind.LOW_SIDE_PORT);

    private static final List<String> PORT_NAMES = List.of("high-side-liquid", "high-side-vapour", "low-side");
    private static final Map<String, EndFitting> ENDS = Map.of(
            "open-close-valve", EndFitting.OPEN_CLOSE_VALVE,
            "self-sealing", EndFitting.SELF_SEALING,
            "plain-flare", EndFitting.PLAIN_FLARE);
    private static final Map<String, VolumeContent> CONTENTS = Map.of(
            "air", VolumeContent.AIR,
            "vapour", VolumeContent.VAPOUR,
            "liquid", VolumeContent.LIQUID,
            "evacuated", VolumeContent.NOTHING);
    private static final Map<String, GasOrigin> ORIGINS = Map.of(
            "system", GasOrigin.SYSTEM,
            "source", GasOrigin.SOURCE,
            "recovered", GasOrigin.RECOVERED);
    private static final Map<String, SystemPort.Fitting> FITTINGS = Map.of(
            "valve-core", SystemPort.Fitting.VALVE_CORE,
            "core-tool", SystemPort.Fitting.CORE_TOOL,
            "stem", SystemPort.Fitting.STEM);
    /** Bore of a hose of 1/4 in; common practice, no source. */
    private static final Length USUAL_BORE = Length.ofMillimetres(4.8);

    private HookUpFields() {}

    static HookUpFacts read(FieldReader root, List<HoseOnSite> hoses) {
        Map<PointKind, SystemPort.Fitting> fittings = new EnumMap<>(PointKind.class);
        root.objectsByName("ports", PORT_NAMES, PORT)
                .forEach((name, fields) -> fittings.put(
                        PORTS.get(name),
                        fields.optionalChoice("fitting", FITTINGS).orElse(SystemPort.Fitting.VALVE_CORE)));
        return new HookUpFacts(
                hoses,
                root.optionalObject("manifold", MANIFOLD).map(HookUpFields::manifold),
                fittings,
                root.flag("vacuumPump").orElse(false),
                root.flag("recoveryMachine").orElse(false));
    }

    private static ManifoldOnSite manifold(FieldReader fields) {
        return new ManifoldOnSite(
                fields.count("valves", List.of(2, 4)).orElse(2),
                fields.optionalChoice("holds", CONTENTS).orElse(VolumeContent.AIR));
    }

    static List<HoseOnSite> hoses(FieldReader cylinder) {
        List<HoseOnSite> hoses = new ArrayList<>();
        for (FieldReader fields : cylinder.objects("hoses", HOSE)) {
            HosePort port = fields.word("port", List.of(HosePort.values()));
            EndFitting systemEnd = fields.choice("systemEnd", ENDS);
            EndFitting cylinderEnd = fields.choice("cylinderEnd", ENDS);
            Length bore = fields.optional("bore", "4.8 mm", Length::parse).orElse(USUAL_BORE);
            VolumeContent holds = fields.optionalChoice("holds", CONTENTS).orElse(VolumeContent.AIR);
            Optional<GasOrigin> from = fields.optionalChoice("contentsFrom", ORIGINS);
            boolean gas = holds == VolumeContent.VAPOUR || holds == VolumeContent.LIQUID;
            if (from.isPresent() && !gas && fields.has("holds")) {
                throw fields.refused("contentsFrom", "stands there, but holds says that the hose holds no refrigerant");
            }
            // a content that nobody vouches for is taken as mixed
            GasOrigin origin = gas ? from.orElse(GasOrigin.UNKNOWN) : GasOrigin.NONE;
            Hose hose =
                    fields.value("length", "5 ft", text -> new Hose(systemEnd, cylinderEnd, bore, Length.parse(text)));
            hoses.add(new HoseOnSite(port, hose, holds, origin));
        }
        return List.copyOf(hoses);
    }
}

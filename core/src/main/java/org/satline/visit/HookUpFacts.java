package org.satline.visit;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.satline.explanation.Coded;
import org.satline.quantity.Mass;
import org.satline.quantity.Parts;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.transfer.PointKind;
import org.satline.transfer.hookup.GasOrigin;
import org.satline.transfer.hookup.Hose;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.hookup.VolumeContent;

/**
 * What is said about hoses, manifold and ports. Immutable, thread-safe.
 *
 * @param hoses the hoses to the cylinder that is connected, as they hang now
 * @param manifold the manifold between them and the system, where there is one
 * @param fittings what the ports are fitted with, where it is said
 * @param vacuumPump whether a vacuum pump is at hand
 * @param recoveryMachine whether a recovery machine is at hand
 */
public record HookUpFacts(
        List<HoseOnSite> hoses,
        Optional<ManifoldOnSite> manifold,
        Map<PointKind, SystemPort.Fitting> fittings,
        boolean vacuumPump,
        boolean recoveryMachine) {
    /** Nothing is said. */
    public static final HookUpFacts NONE = new HookUpFacts(List.of(), Optional.empty(), Map.of(), false, false);

    /** Where a hose is joined on the side of the system. */
    public enum HosePort implements Coded {
        /** Service port on the liquid line. */
        HIGH_SIDE_LIQUID(Optional.of(PointKind.HIGH_SIDE_LIQUID_PORT)),
        /** Service port on the discharge line. */
        HIGH_SIDE_VAPOUR(Optional.of(PointKind.HIGH_SIDE_VAPOUR_PORT)),
        /** Service port on the suction side. */
        LOW_SIDE(Optional.of(PointKind.LOW_SIDE_PORT)),
        /** Centre connection of the manifold. */
        CENTRE(Optional.empty());

        private final Optional<PointKind> port;

        HosePort(Optional<PointKind> port) {
            this.port = port;
        }

        /**
         * The port of the system.
         *
         * @return the port; nothing for the centre of a manifold
         */
        public Optional<PointKind> port() {
            return port;
        }

        /**
         * The word for it in a visit file.
         *
         * @return lower case with hyphens, such as {@code high-side-liquid}
         */
        public String field() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /**
         * The word for a port of the system in a visit file.
         *
         * @param port of the system
         * @return as {@link #field()}; any other point by its own word
         */
        public static String field(PointKind port) {
            return Stream.of(values())
                    .filter(each -> each.port.filter(port::equals).isPresent())
                    .findFirst()
                    .map(HosePort::field)
                    .orElseGet(port::word);
        }
    }

    /**
     * What hoses hold when they are full of liquid.
     *
     * @param hoses the hoses
     * @param refrigerant in them
     * @param temperature of the liquid; the nearest that has a bubble point, where it has none
     * @return the mass of all of them
     */
    public static Mass liquidIn(List<HoseOnSite> hoses, Refrigerant refrigerant, Temperature temperature) {
        SaturationCurve curve = SaturationCurves.of(refrigerant);
        double kelvins = Math.max(
                curve.bubbleTemperatureRange().low(),
                Math.min(temperature.kelvins(), curve.bubbleTemperatureRange().high()));
        double liquid = curve.bubbleLiquidDensity(kelvins);
        return Mass.ofKilograms(hoses.stream()
                .mapToDouble(each -> each.hose().volume().cubicMetres() * liquid)
                .sum());
    }

    /**
     * A hose.
     *
     * @param port where it is joined on the side of the system
     * @param hose its ends and size
     * @param holds what is in it
     * @param origin whose refrigerant that is
     */
    public record HoseOnSite(HosePort port, Hose hose, VolumeContent holds, GasOrigin origin) {
        /** {@inheritDoc} */
        public HoseOnSite {
            Parts.required("port hose holds origin", port, hose, holds, origin);
        }
    }

    /**
     * A manifold.
     *
     * @param valves 2 or 4
     * @param holds what is in its chambers and in the hoses to the system
     */
    public record ManifoldOnSite(int valves, VolumeContent holds) {
        /** {@inheritDoc} */
        public ManifoldOnSite {
            Parts.required("holds", holds);
            if (valves != 2 && valves != 4) {
                throw new IllegalArgumentException("a manifold has 2 or 4 valves, not " + valves);
            }
        }
    }

    /** {@inheritDoc} */
    public HookUpFacts {
        Parts.required("fittings", fittings);
        Parts.required("manifold", manifold);
        hoses = Parts.list("hoses", hoses);
        Map<PointKind, SystemPort.Fitting> copy = new EnumMap<>(PointKind.class);
        copy.putAll(fittings);
        fittings = Collections.unmodifiableMap(copy);
    }
}

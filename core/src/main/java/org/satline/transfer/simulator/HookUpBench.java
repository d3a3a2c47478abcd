package org.satline.transfer.simulator;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.transfer.hookup.GasLaw;
import org.satline.transfer.hookup.GasOrigin;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpPractice;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.Medium;
import org.satline.transfer.hookup.ServiceCylinder;
import org.satline.transfer.hookup.VolumeContent;
import org.satline.transfer.hookup.VolumeState;

/** The masses while one act is played. Every gram goes through {@link #move}, which books it and checks its owner. Not thread-safe. */
final class HookUpBench {
    /** Less than this counts as nothing, kg: 8 microlitres of air. */
    static final double NEGLIGIBLE_KG = 1e-8;

    /** What one volume holds, while it changes. */
    static final class Cell {
        final double size;
        private final VolumeState first;
        double refrigerant;
        double air;
        double kelvins;
        double pascals;
        boolean liquid;
        GasOrigin origin;

        Cell(double size, VolumeState state) {
            this.size = size;
            first = state;
            refrigerant = state.refrigerant().kilograms();
            air = state.air().kilograms();
            kelvins = state.temperature().kelvins();
            pascals = state.pressure().pascals();
            origin = state.origin();
            liquid = state.content() == VolumeContent.LIQUID;
        }

        boolean holdsAir() {
            return air > NEGLIGIBLE_KG;
        }

        boolean holdsRefrigerant() {
            return refrigerant > NEGLIGIBLE_KG;
        }

        private boolean isAsBefore(VolumeContent content) {
            return content == first.content()
                    && (holdsRefrigerant() ? origin : GasOrigin.NONE) == first.origin()
                    && pascals == first.pressure().pascals()
                    && kelvins == first.temperature().kelvins()
                    && refrigerant == first.refrigerant().kilograms()
                    && air == first.air().kilograms();
        }

        private VolumeState state() {
            VolumeContent content = holdsAir()
                    ? VolumeContent.AIR
                    : !holdsRefrigerant()
                            ? VolumeContent.NOTHING
                            : liquid ? VolumeContent.LIQUID : VolumeContent.VAPOUR;
            if (isAsBefore(content)) {
                return first;
            }
            return new VolumeState(
                    content,
                    Pressure.ofPascals(pascals),
                    holdsRefrigerant() ? origin : GasOrigin.NONE,
                    Temperature.ofKelvins(kelvins),
                    Mass.ofKilograms(refrigerant),
                    Mass.ofKilograms(air));
        }
    }

    final Layout parts;
    final GasLaw law;
    final Map<String, Cell> cells = new LinkedHashMap<>();
    final Set<String> swept = new TreeSet<>();
    final Set<Violation> violations = new LinkedHashSet<>();
    private final List<Transfer> transfers = new ArrayList<>();
    private final Set<String> airEntered = new TreeSet<>();
    private double ventedVapour;
    private double ventedLiquid;
    /** What a coupling spills is all that may be lost of a gas that is never vented. */
    private boolean parting;

    HookUpBench(Layout parts, GasLaw law, HookUpState state) {
        this.parts = parts;
        this.law = law;
        parts.sizes.forEach((name, size) -> {
            Cell cell = new Cell(size, state.volume(name));
            // with air over it liquid is liquid all the same
            cell.liquid |= cell.holdsAir() && law.isLiquid(cell.refrigerant, size, cell.kelvins);
            cells.put(name, cell);
        });
    }

    Cell cell(String name) {
        Cell cell = cells.get(name);
        if (cell == null) {
            throw new IllegalStateException("no volume is called " + name);
        }
        return cell;
    }

    void breaks(Invariant invariant, String place) {
        violations.add(new Violation(invariant, place));
    }

    /** Moves masses and checks them against what the receiving place may take. */
    void move(String from, String to, double refrigerantWanted, double airWanted, boolean liquid) {
        Cell giver = cells.get(from);
        double refrigerant = giver == null
                ? Math.max(0, refrigerantWanted)
                : Math.max(0, Math.min(refrigerantWanted, giver.refrigerant));
        double air = giver == null ? Math.max(0, airWanted) : Math.max(0, Math.min(airWanted, giver.air));
        if (!(refrigerant > 0 || air > 0)) {
            return;
        }
        GasOrigin origin =
                giver != null ? giver.origin : parts.port(from).isPresent() ? GasOrigin.SYSTEM : GasOrigin.NONE;
        check(from, to, refrigerant, air, liquid, origin);
        if (giver != null) {
            giver.refrigerant -= refrigerant;
            giver.air -= air;
        }
        Cell taker = cells.get(to);
        if (taker != null) {
            if (refrigerant > 0) {
                taker.origin = taker.holdsRefrigerant() ? taker.origin.with(origin) : origin;
            }
            taker.refrigerant += refrigerant;
            taker.air += air;
        }
        transfers.add(new Transfer(
                from,
                to,
                refrigerant <= NEGLIGIBLE_KG ? Medium.AIR : liquid ? Medium.LIQUID : Medium.VAPOUR,
                refrigerant > 0 ? origin : GasOrigin.NONE,
                Mass.ofKilograms(refrigerant),
                Mass.ofKilograms(air)));
    }

    private void check(String from, String to, double refrigerant, double air, boolean liquid, GasOrigin origin) {
        boolean some = refrigerant > NEGLIGIBLE_KG;
        boolean airy = air > NEGLIGIBLE_KG;
        Cell taker = cells.get(to);
        if (some && parts.hookUp.gas().carbonDioxide() && isSource(from)) {
            breaks(Invariant.UNREGULATED_CARBON_DIOXIDE, from);
        }
        if (parts.port(to).isPresent()) {
            if (airy) {
                breaks(Invariant.AIR_INTO_SYSTEM, to);
            }
            if (some && !origin.isClean()) {
                breaks(Invariant.FOREIGN_GAS_INTO_SYSTEM, to);
            }
        } else if (parts.cylinder(to).isPresent() && taker != null) {
            if (airy) {
                breaks(Invariant.AIR_INTO_CYLINDER, to);
            }
            boolean source = isSource(to);
            boolean ownAlone = taker.holdsRefrigerant() && taker.origin.isClean();
            boolean foreign = source ? origin != GasOrigin.SOURCE : ownAlone && !origin.isClean();
            if (some && (foreign || origin == GasOrigin.UNKNOWN)) {
                breaks(Invariant.FOREIGN_GAS_INTO_CYLINDER, to);
            }
        } else if (some && taker != null && !origin.isClean()) {
            spoils(to, taker);
        }
        if (airy && taker != null) {
            airEntered.add(to);
        }
        if (some && (to.equals(HookUp.AIR) || to.equals(HookUp.PUMP))) {
            vent(from, to, refrigerant, liquid, origin);
        }
    }

    private boolean isSource(String volume) {
        return parts.cylinder(volume)
                .filter(cylinder -> cylinder.use() != ServiceCylinder.Use.RECEIVER)
                .isPresent();
    }

    /** Unclean gas comes to a volume. */
    void spoils(String name, Cell cell) {
        if (parts.hose(name).isPresent() && cell.holdsRefrigerant() && !cell.holdsAir() && cell.origin.isClean()) {
            breaks(Invariant.FOREIGN_GAS_INTO_HOSE, name);
        }
    }

    private void vent(String from, String to, double refrigerant, boolean liquid, GasOrigin origin) {
        if (liquid) {
            ventedLiquid += refrigerant;
        } else {
            ventedVapour += refrigerant;
        }
        if (!parts.hookUp.gas().mayBeVented() && !parting) {
            breaks(Invariant.VENTED_FORBIDDEN_GROUP, from);
        }
        // a pump is the way to be rid of a hose of unknown content; the open air is not
        if (origin == GasOrigin.UNKNOWN && to.equals(HookUp.AIR)) {
            breaks(Invariant.VENTED_ABOVE_LEAST, from);
        }
    }

    /** What spills as a coupling parts with refrigerant behind a shut end. */
    void spill(String from, boolean liquid, double pascals, double kelvins) {
        double density = liquid ? law.liquidDensity(kelvins) : law.vapourDensity(pascals);
        double spilt = HookUpPractice.COUPLING_ML.value() * 1e-6 * density;
        Cell cell = cells.get(from);
        parting = true;
        move(from, HookUp.AIR, cell == null ? spilt : Math.min(spilt, cell.refrigerant), 0, liquid);
        parting = false;
    }

    /** The pressure of a cylinder after something went in or out. */
    void settleCylinder(String name) {
        Cell cell = cells.get(name);
        if (cell != null && parts.cylinder(name).isPresent()) {
            cell.pascals = law.pressure(cell.refrigerant, cell.air, cell.size, cell.kelvins);
            cell.liquid = law.isLiquid(cell.refrigerant, cell.size, cell.kelvins);
        }
    }

    Map<String, VolumeState> volumes() {
        Map<String, VolumeState> states = new HashMap<>();
        cells.forEach((name, cell) -> states.put(name, cell.state()));
        return states;
    }

    Effects effects(Set<String> liquidShutIn) {
        Map<String, Pressure> pressures = new HashMap<>();
        cells.forEach((name, cell) -> pressures.put(name, Pressure.ofPascals(cell.pascals)));
        return new Effects(
                transfers,
                swept,
                Mass.ofKilograms(ventedVapour),
                Mass.ofKilograms(ventedLiquid),
                airEntered,
                liquidShutIn,
                pressures,
                List.copyOf(violations));
    }
}

package org.satline.transfer.simulator;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.quantity.Pressure;
import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.GasLaw;
import org.satline.transfer.hookup.GasOrigin;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpPractice;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.simulator.HookUpBench.Cell;
import org.satline.transfer.simulator.OpenPaths.Edge;

/**
 * What goes from one end of a path to another during an act: it drives out what was in the volumes on the way, and as much follows as one
 * opening passes or the act names.
 */
final class ThroughFlow {
    private final HookUpBench bench;
    private final Layout parts;
    private final GasLaw law;
    private final OpenPaths paths;
    private final Act act;
    private final VolumeFiller filler;
    private final double atmospherePa;

    ThroughFlow(HookUpBench bench, OpenPaths paths, Act act, VolumeFiller filler) {
        this.bench = bench;
        this.parts = bench.parts;
        this.law = bench.law;
        this.paths = paths;
        this.act = act;
        this.filler = filler;
        this.atmospherePa = parts.hookUp.atmosphere().pressure().pascals();
    }

    /** Lets gas go through from a higher end to a lower one; returns the nodes on the way. */
    List<String> run(PathEnd high, PathEnd low) {
        List<Edge> way = paths.path(high.edge(), low.edge());
        List<String> nodes = new ArrayList<>(List.of(high.edge().node()));
        for (Edge edge : way.subList(1, way.size() - 1)) {
            nodes.add(edge.from(nodes.get(nodes.size() - 1)));
        }
        List<String> volumes =
                nodes.stream().filter(node -> !OpenPaths.isJoint(node)).toList();
        boolean toAir = low.name().equals(HookUp.AIR);
        int narrow = way.size() - 1;
        for (int i = way.size() - 1; !toAir && i >= 0; i--) {
            narrow = way.get(i).throttled() ? i : narrow;
        }
        boolean throttled = way.stream().anyMatch(Edge::throttled);
        boolean liquid = high.liquid() || volumes.stream().anyMatch(node -> bench.cell(node).liquid);
        misuse(high, low, liquid, throttled);
        boolean dirty = volumes.stream()
                .map(bench::cell)
                .anyMatch(cell ->
                        cell.holdsAir() || (cell.holdsRefrigerant() && !cell.origin.isClean() && !isOwn(cell, high)));
        double size =
                volumes.stream().mapToDouble(node -> bench.cell(node).size).sum();
        // too little above the atmosphere it trickles out at the joint and leaves the air where it is
        boolean sweeps = !toAir || high.pascals() - atmospherePa > sweepPa();
        Optional<Cell> weighed = Optional.ofNullable(bench.cells.get(low.name()))
                .or(() -> Optional.ofNullable(bench.cells.get(high.name())));
        double weight = weighed.map(cell -> cell.refrigerant).orElse(0.0);
        for (int i = 0; sweeps && i < volumes.size(); i++) {
            String node = volumes.get(i);
            boolean upstream = nodes.indexOf(node) < narrow;
            replace(node, high, low, upstream);
            bench.swept.add(node);
        }
        // the scale shows what went through the hoses and what stayed in them alike
        double already = toAir || act.amount().isEmpty()
                ? 0
                : Math.abs(weighed.map(cell -> cell.refrigerant).orElse(0.0) - weight);
        double amount = Math.max(0, amount(high, low, toAir && dirty ? size : 0, volumes.isEmpty()) - already);
        double share = high.name().equals(HookUp.AIR) ? 1 : 0;
        bench.move(
                high.name(),
                low.name(),
                amount * (1 - share),
                amount * share + filler.airWith(high, amount),
                high.liquid());
        if (toAir) {
            boolean atJoint = !paths.isOffEnd(low.edge().node());
            ventedEnough(high, liquid, volumes, dirty && sweeps && atJoint, amount);
        }
        return nodes;
    }

    private static double sweepPa() {
        return Pressure.ofBars(HookUpPractice.SWEEP_ABOVE_ATMOSPHERE_BAR.value())
                .pascals();
    }

    private void ventedEnough(
            PathEnd high, boolean liquid, List<String> volumes, boolean neededSweep, double kilograms) {
        boolean coupling = volumes.isEmpty() && (act.kind() == Act.Kind.CRACK || act.kind() == Act.Kind.OPEN_SHORT);
        boolean least = neededSweep && kilograms * 1000 <= HookUpPractice.MOST_SWEPT_G.value();
        if (liquid || !(coupling || least)) {
            bench.breaks(Invariant.VENTED_ABOVE_LEAST, high.name());
        }
    }

    private void misuse(PathEnd high, PathEnd low, boolean liquid, boolean throttled) {
        Cell cylinder = bench.cells.get(high.name());
        boolean holds = cylinder == null ? parts.port(high.name()).isPresent() : cylinder.holdsRefrigerant();
        // a pump that stands still is a way to the air, and no place to blow refrigerant through
        if (low.edge().connection().equals(HookUp.PUMP) && holds) {
            bench.breaks(Invariant.MACHINE_MISUSED, HookUp.PUMP);
        }
        if (low.name().equals(SystemPort.Role.LOW_SIDE.code()) && liquid) {
            boolean metered = throttled && (act.kind() == Act.Kind.CRACK || act.kind() == Act.Kind.OPEN_SHORT);
            if (!parts.hookUp.running() || !metered) {
                bench.breaks(Invariant.UNMETERED_LIQUID_INTO_SUCTION, low.name());
            }
        }
    }

    /** What was in a volume is driven on; above the narrowest place it then holds what comes, below it what is left of that as vapour. */
    private void replace(String node, PathEnd high, PathEnd low, boolean upstream) {
        Cell cell = bench.cell(node);
        boolean liquid = upstream && high.liquid();
        if (!isOwn(cell, high) || cell.holdsAir() || (cell.liquid && !liquid)) {
            bench.move(node, low.name(), cell.refrigerant, cell.air, cell.liquid);
            cell.liquid = false;
            cell.pascals = 0;
        }
        double pascals = upstream ? high.pascals() : low.pascals();
        if (cell.pascals > pascals + VolumeFiller.EQUAL_PA) {
            filler.lower(node, pascals, low);
        }
        filler.fill(node, pascals, high, liquid);
    }

    private boolean isOwn(Cell cell, PathEnd high) {
        Cell cylinder = bench.cells.get(high.name());
        return cell.origin == (cylinder == null ? GasOrigin.SYSTEM : cylinder.origin)
                && !high.name().equals(HookUp.AIR);
    }

    private double amount(PathEnd high, PathEnd low, double sweptSize, boolean coupling) {
        boolean toAir = low.name().equals(HookUp.AIR);
        double usual =
                (high.liquid() ? HookUpPractice.LIQUID_PER_OPENING_G : HookUpPractice.VAPOUR_PER_OPENING_G).value()
                        / 1000;
        if (high.name().equals(HookUp.AIR)) {
            return usual;
        }
        Cell giver = bench.cells.get(high.name());
        if (low.name().equals(HookUp.PUMP) && giver != null && !giver.holdsRefrigerant()) {
            bench.move(high.name(), low.name(), 0, giver.air, false);
            return 0;
        }
        if (toAir) {
            return sweptSize > 0 && !coupling && !high.liquid()
                    ? HookUpPractice.SWEEP_VOLUMES.value() * sweptSize * law.vapourDensity(high.pascals())
                    : usual;
        }
        double wanted = act.amount().map(mass -> mass.kilograms()).orElse(usual);
        double most = giver == null ? wanted : Math.min(wanted, giver.refrigerant);
        Cell taker = bench.cells.get(low.name());
        return taker == null ? most : Math.min(most, room(taker, high.pascals()));
    }

    /** How much more a cylinder takes until it stands at the pressure that feeds it, or is full. */
    private double room(Cell taker, double pascals) {
        double most = pascals < law.saturationPa(taker.kelvins)
                ? law.vapourDensity(pascals) * taker.size
                : law.liquidDensity(taker.kelvins) * taker.size;
        return Math.max(0, most - taker.refrigerant);
    }
}

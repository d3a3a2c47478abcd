package org.satline.transfer.simulator;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.GasLaw;
import org.satline.transfer.hookup.GasOrigin;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpPractice;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.ServiceCylinder;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.simulator.HookUpBench.Cell;
import org.satline.transfer.simulator.OpenPaths.Edge;
import org.satline.transfer.simulator.OpenPaths.Group;

/**
 * Lets everything flow that is open, for the one or two seconds that an act takes. Small volumes even out at once; between a port, a
 * cylinder, the pump and the open air goes what the practice of short openings passes, or what the act names. A gas that goes through a
 * volume drives out what was in it as a plug. Of two ends the higher feeds the lower along the shortest way; side branches follow the way's
 * pressure.
 */
final class FlowSettler {
    private final HookUpBench bench;
    private final Layout parts;
    private final HookUp hookUp;
    private final GasLaw law;
    private final OpenPaths paths;
    private final HookUpState state;
    private final Act act;
    private final VolumeFiller filler;
    private final ThroughFlow throughFlow;
    private final double atmospherePa;
    private final Map<String, Double> pascalsBefore = new HashMap<>();

    FlowSettler(HookUpBench bench, OpenPaths paths, HookUpState state, Act act) {
        this.bench = bench;
        this.parts = bench.parts;
        this.hookUp = parts.hookUp;
        this.law = bench.law;
        this.paths = paths;
        this.state = state;
        this.act = act;
        this.filler = new VolumeFiller(bench, paths, act);
        this.throughFlow = new ThroughFlow(bench, paths, act, filler);
        this.atmospherePa = hookUp.atmosphere().pressure().pascals();
        bench.cells.forEach((name, cell) -> pascalsBefore.put(name, cell.pascals));
    }

    void settle() {
        for (Group group : paths.groups()) {
            Map<String, PathEnd> ends = new LinkedHashMap<>();
            for (Edge edge : group.ends()) {
                PathEnd end = end(edge);
                // of two valves of one cylinder the one that gives liquid counts: the worse of both
                ends.merge(end.name(), end, (a, b) -> b.liquid() && !a.liquid() ? b : a);
            }
            highAndLow(ends.keySet());
            intoSource(ends.values());
            if (ends.isEmpty()) {
                evenOut(volumes(group));
            } else {
                flow(group, new ArrayList<>(ends.values()));
            }
        }
        hookUp.cylinders().forEach(cylinder -> bench.settleCylinder(cylinder.name()));
        if (state.running().contains(HookUp.MACHINE)) {
            pumpOver();
            hookUp.cylinders().forEach(cylinder -> bench.settleCylinder(cylinder.name()));
        }
        paths.groups().forEach(this::risen);
    }

    /** What a cylinder has taken raises its pressure, and with it that of what is open to it alone. */
    private void risen(Group group) {
        Set<String> names = new HashSet<>();
        group.ends().forEach(edge -> names.add(edge.other()));
        Cell cylinder = names.size() == 1 ? bench.cells.get(names.iterator().next()) : null;
        // of mixed gas and air nothing comes back: it is what came that is pressed together
        if (cylinder == null || !cylinder.holdsRefrigerant() || cylinder.holdsAir() || !cylinder.origin.isClean()) {
            return;
        }
        PathEnd end = end(group.ends().get(0));
        PathEnd vapour = new PathEnd(end.edge(), end.pascals(), false, end.kelvins());
        for (String node : volumes(group)) {
            Cell cell = bench.cell(node);
            if (cell.pascals < cylinder.pascals - VolumeFiller.EQUAL_PA && cell.liquid) {
                cell.pascals = cylinder.pascals;
            } else if (cell.pascals < cylinder.pascals - VolumeFiller.EQUAL_PA) {
                filler.fill(node, cylinder.pascals, vapour, false);
            }
        }
        bench.settleCylinder(end.name());
    }

    private PathEnd end(Edge edge) {
        String name = edge.other();
        Optional<SystemPort> port = parts.port(name);
        if (port.isPresent()) {
            SystemPort at = port.get();
            return new PathEnd(
                    edge, at.pressure().pascals(), at.liquid(), at.temperature().kelvins());
        }
        Optional<ServiceCylinder> cylinder = parts.cylinder(name);
        if (cylinder.isPresent()) {
            Cell cell = bench.cell(name);
            boolean inverted = state.inverted().contains(name);
            boolean liquid = cell.liquid && cylinder.get().liquidAt(edge.connection(), inverted);
            return new PathEnd(edge, cell.pascals, liquid, cell.kelvins);
        }
        return new PathEnd(edge, name.equals(HookUp.AIR) ? atmospherePa : 0, false, law.ambientK());
    }

    private void highAndLow(Set<String> ends) {
        boolean low = ends.contains(SystemPort.Role.LOW_SIDE.code());
        boolean high =
                ends.contains(SystemPort.Role.LIQUID_LINE.code()) || ends.contains(SystemPort.Role.DISCHARGE.code());
        if (hookUp.running() && low && high) {
            bench.breaks(Invariant.HIGH_AND_LOW_JOINED, SystemPort.Role.LOW_SIDE.code());
        }
    }

    /** Within the errors of the gauges the system may as well flow into the source. */
    private void intoSource(Collection<PathEnd> ends) {
        for (PathEnd source : ends) {
            boolean gives = parts.cylinder(source.name())
                    .filter(cylinder -> cylinder.use() != ServiceCylinder.Use.RECEIVER)
                    .isPresent();
            boolean close = ends.stream()
                    .anyMatch(end -> parts.port(end.name()).isPresent()
                            && Math.abs(end.pascals() - source.pascals()) <= HookUp.certainPa());
            if (gives && close) {
                bench.breaks(Invariant.FOREIGN_GAS_INTO_CYLINDER, source.name());
            }
        }
    }

    private List<String> volumes(Group group) {
        return group.nodes().stream().filter(node -> !OpenPaths.isJoint(node)).toList();
    }

    /** Volumes open to each other alone: one pressure, and what is in them spread by volume. */
    private void evenOut(List<String> names) {
        List<Cell> cells = names.stream().map(bench::cell).toList();
        boolean same = cells.stream()
                .allMatch(cell -> Math.abs(cell.pascals - cells.get(0).pascals) <= VolumeFiller.EQUAL_PA
                        && cell.liquid == cells.get(0).liquid
                        && cell.holdsAir() == cells.get(0).holdsAir()
                        && cell.origin.isClean() == cells.get(0).origin.isClean());
        if (names.size() < 2 || same) {
            return;
        }
        double size = cells.stream().mapToDouble(cell -> cell.size).sum();
        double refrigerant =
                cells.stream().mapToDouble(cell -> cell.refrigerant).sum();
        double air = cells.stream().mapToDouble(cell -> cell.air).sum();
        double kelvins =
                cells.stream().mapToDouble(cell -> cell.kelvins * cell.size).sum() / size;
        boolean anyLiquid = cells.stream().anyMatch(cell -> cell.liquid);
        for (String giver : names) {
            for (String taker : names) {
                Cell from = bench.cell(giver);
                Cell to = bench.cell(taker);
                double spare = from.refrigerant - refrigerant * from.size / size;
                double lack = refrigerant * to.size / size - to.refrigerant;
                double spareAir = from.air - air * from.size / size;
                double lackAir = air * to.size / size - to.air;
                bench.move(giver, taker, Math.min(spare, lack), Math.min(spareAir, lackAir), from.liquid);
            }
        }
        double highest = cells.stream().mapToDouble(cell -> cell.pascals).max().orElse(0);
        double pascals = Math.min(law.pressure(refrigerant, air, size, kelvins), highest);
        boolean liquid = anyLiquid && law.isLiquid(refrigerant, size, kelvins);
        GasOrigin worst = cells.stream()
                .filter(Cell::holdsRefrigerant)
                .map(cell -> cell.origin)
                .reduce(GasOrigin.NONE, GasOrigin::with);
        for (Cell cell : cells) {
            cell.pascals = pascals;
            cell.kelvins = kelvins;
            cell.liquid = liquid;
            cell.origin = worst;
        }
    }

    private void flow(Group group, List<PathEnd> ends) {
        ends.sort(Comparator.comparingDouble(PathEnd::pascals));
        PathEnd high = ends.get(ends.size() - 1);
        List<PathEnd> sinks = ends.stream()
                .filter(end -> high.pascals() - end.pascals() > VolumeFiller.EQUAL_PA)
                .toList();
        GasOrigin spoiling = spoiling(group, ends);
        // a hose between port and cylinder that is shut at the port is emptied into the cylinder as it is left, and is
        // mixed then
        boolean apart = hookUp.manifold().isEmpty()
                && ends.stream().noneMatch(end -> parts.port(end.name()).isPresent());
        if (!spoiling.isClean() && !apart) {
            volumes(group).forEach(node -> bench.spoils(node, bench.cell(node)));
        }
        Set<String> onTheWay = new HashSet<>();
        for (PathEnd sink : sinks) {
            onTheWay.addAll(throughFlow.run(high, sink));
        }
        // the rest: everything where nothing goes through, otherwise the side branches
        List<String> order = paths.order(List.of(high.edge().node()), group.nodes());
        PathEnd taker = sinks.isEmpty() ? high : sinks.get(0);
        for (String node : order) {
            if (!OpenPaths.isJoint(node) && !onTheWay.contains(node)) {
                double pascals = sinks.isEmpty() ? high.pascals() : pressureBeside(node, onTheWay, high);
                filler.bring(node, pascals, high, taker);
            }
        }
        if (sinks.isEmpty() && high.name().equals(HookUp.AIR)) {
            leftOpen(group);
        }
        for (String node : volumes(group)) {
            Cell cell = bench.cell(node);
            if (!spoiling.isClean() && cell.holdsRefrigerant()) {
                cell.origin = cell.origin.with(spoiling);
            }
        }
    }

    /** A side branch takes the pressure of the nearest volume that something flows through; at the joint that leaks, that of the gas. */
    private double pressureBeside(String node, Set<String> onTheWay, PathEnd high) {
        for (String near : paths.order(List.of(node), paths.nodes())) {
            if (onTheWay.contains(near)) {
                return OpenPaths.isJoint(near) ? high.pascals() : bench.cell(near).pascals;
            }
        }
        return high.pascals();
    }

    /** The worst gas of a cylinder to which these volumes are joined without certain flow towards it; they count as mixed from then on. */
    private GasOrigin spoiling(Group group, List<PathEnd> ends) {
        double highest = Math.max(
                ends.get(ends.size() - 1).pascals(),
                volumes(group).stream()
                        .mapToDouble(node -> bench.cell(node).pascals)
                        .max()
                        .orElse(0));
        GasOrigin worst = GasOrigin.NONE;
        for (PathEnd end : ends) {
            Cell cylinder = bench.cells.get(end.name());
            if (cylinder != null && cylinder.holdsRefrigerant() && highest - end.pascals() <= HookUp.certainPa()) {
                worst = worst.with(cylinder.origin);
            }
        }
        return worst;
    }

    /** At the pressure of the air nothing keeps the air out: at once where an end is off, after one act where a joint is loose. */
    private void leftOpen(Group group) {
        boolean wide = group.nodes().stream().anyMatch(paths::isWide);
        for (String node : volumes(group)) {
            Cell cell = bench.cell(node);
            boolean still = Math.abs(pascalsBefore.getOrDefault(node, 0.0) - atmospherePa) <= VolumeFiller.EQUAL_PA;
            if (cell.holdsRefrigerant() && (wide || still)) {
                bench.move(node, HookUp.AIR, cell.refrigerant, 0, cell.liquid);
                cell.liquid = false;
                double missing = law.airKg(atmospherePa, cell.size) - cell.air;
                bench.move(HookUp.AIR, node, 0, missing, false);
                cell.pascals = atmospherePa;
            }
        }
    }

    /** The recovery machine carries what its inlet is open to into the cylinder that its outlet is open to. */
    private void pumpOver() {
        Group inlet = groupOf(HookUp.MACHINE_INLET);
        Group outlet = groupOf(HookUp.MACHINE_OUTLET);
        Optional<PathEnd> into = outlet.ends().stream()
                .filter(edge -> bench.cells.containsKey(edge.other()))
                .map(this::end)
                .findFirst();
        if (into.isEmpty()) {
            bench.breaks(Invariant.MACHINE_MISUSED, HookUp.MACHINE);
            return;
        }
        PathEnd to = into.get();
        if (act.kind() == Act.Kind.SELF_PURGE
                && inlet.nodes().size() + inlet.ends().size() > 1) {
            // with its inlet open it would draw on instead of emptying itself
            bench.breaks(Invariant.MACHINE_MISUSED, HookUp.MACHINE);
        }
        Optional<PathEnd> from = inlet.ends().stream()
                .filter(edge -> !edge.other().equals(HookUp.PUMP))
                .map(this::end)
                .findFirst();
        double weight = bench.cell(to.name()).refrigerant;
        for (String node : volumes(inlet)) {
            Cell cell = bench.cell(node);
            bench.move(node, to.name(), cell.refrigerant, cell.air, cell.liquid);
            cell.liquid = false;
            cell.pascals = 0;
        }
        for (String node : paths.order(List.of(HookUp.MACHINE_OUTLET), outlet.nodes())) {
            if (!OpenPaths.isJoint(node) && from.isPresent()) {
                Cell cell = bench.cell(node);
                bench.move(node, to.name(), cell.refrigerant, cell.air, cell.liquid);
                cell.liquid = false;
                cell.pascals = 0;
            }
        }
        if (from.isEmpty()) {
            return;
        }
        PathEnd source = from.get();
        volumes(inlet).forEach(node -> filler.fill(node, source.pascals(), source, source.liquid()));
        Cell taker = bench.cell(to.name());
        for (String node : volumes(outlet)) {
            filler.fill(node, to.pascals(), source, false);
            // what stands open to the cylinder counts as its gas
            bench.cell(node).origin = bench.cell(node).origin.with(taker.origin);
        }
        double room = Math.max(0, law.liquidDensity(taker.kelvins) * taker.size - taker.refrigerant);
        boolean air = source.name().equals(HookUp.AIR);
        double usual = HookUpPractice.LIQUID_PER_OPENING_G.value() / 1000;
        // the scale shows what stood in the hoses alike
        double already = act.amount().isPresent() ? taker.refrigerant - weight : 0;
        double wanted = act.amount().map(mass -> mass.kilograms()).orElse(usual);
        double amount = Math.min(room, Math.max(0, wanted - already));
        bench.move(source.name(), to.name(), air ? 0 : amount, air ? amount : 0, source.liquid());
    }

    private Group groupOf(String node) {
        return paths.groups().stream()
                .filter(group -> group.nodes().contains(node))
                .findFirst()
                .orElseThrow();
    }
}

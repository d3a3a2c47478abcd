package org.satline.transfer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.satline.quantity.Pressure;
import org.satline.transfer.HookUpBench.Cell;
import org.satline.transfer.OpenPaths.Edge;
import org.satline.transfer.OpenPaths.Group;

/**
 * Lets everything flow that is open, for the one or two seconds that an act takes. Small volumes even out at once; between a port, a cylinder,
 * the pump and the open air goes what the practice of short openings passes, or what the act names. A gas that goes through a volume drives
 * out what was in it as a plug. Of two ends the higher feeds the lower along the shortest way; side branches follow the way's pressure.
 */
final class FlowSettler {
    /** Pressures closer than this count as equal, Pa. */
    private static final double EQUAL_PA = 200;

    private final HookUpBench bench;
    private final Layout parts;
    private final HookUp hookUp;
    private final GasLaw law;
    private final OpenPaths paths;
    private final HookUpState state;
    private final Act act;
    private final double atmospherePa;

    FlowSettler(HookUpBench bench, OpenPaths paths, HookUpState state, Act act) {
        this.bench = bench;
        this.parts = bench.parts;
        this.hookUp = parts.hookUp;
        this.law = bench.law;
        this.paths = paths;
        this.state = state;
        this.act = act;
        this.atmospherePa = hookUp.atmosphere().pressure().pascals();
    }

    /** An end of a group's paths at this moment. */
    private record End(Edge edge, double pascals, boolean liquid, double kelvins) {
        String name() {
            return edge.other();
        }
    }

    void settle() {
        for (Group group : paths.groups()) {
            Map<String, End> ends = new LinkedHashMap<>();
            for (Edge edge : group.ends()) {
                End end = end(edge);
                // of two valves of one cylinder the one that gives liquid counts: the worse of both
                ends.merge(end.name(), end, (a, b) -> b.liquid() && !a.liquid() ? b : a);
            }
            highAndLow(ends.keySet());
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
    }

    private End end(Edge edge) {
        String name = edge.other();
        Optional<SystemPort> port = parts.port(name);
        if (port.isPresent()) {
            SystemPort at = port.get();
            return new End(
                    edge, at.pressure().pascals(), at.liquid(), at.temperature().kelvins());
        }
        Optional<ServiceCylinder> cylinder = parts.cylinder(name);
        if (cylinder.isPresent()) {
            Cell cell = bench.cell(name);
            boolean inverted = state.inverted().contains(name);
            boolean liquid = cell.liquid && cylinder.get().liquidAt(edge.connection(), inverted);
            return new End(edge, cell.pascals, liquid, cell.kelvins);
        }
        return new End(edge, name.equals(HookUp.AIR) ? atmospherePa : 0, false, law.ambientK());
    }

    private void highAndLow(Set<String> ends) {
        boolean low = ends.contains(SystemPort.Role.LOW_SIDE.code());
        boolean high =
                ends.contains(SystemPort.Role.LIQUID_LINE.code()) || ends.contains(SystemPort.Role.DISCHARGE.code());
        if (hookUp.running() && low && high) {
            bench.breaks(Invariant.HIGH_AND_LOW_JOINED, SystemPort.Role.LOW_SIDE.code());
        }
    }

    private List<String> volumes(Group group) {
        return group.nodes().stream().filter(node -> !OpenPaths.isJoint(node)).toList();
    }

    /** Volumes open to each other alone: one pressure, and what is in them spread by volume. */
    private void evenOut(List<String> names) {
        List<Cell> cells = names.stream().map(bench::cell).toList();
        boolean same = cells.stream()
                .allMatch(cell -> Math.abs(cell.pascals - cells.get(0).pascals) <= EQUAL_PA
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

    private void flow(Group group, List<End> ends) {
        ends.sort(Comparator.comparingDouble(End::pascals));
        End high = ends.get(ends.size() - 1);
        List<End> sinks = ends.stream()
                .filter(end -> high.pascals() - end.pascals() > EQUAL_PA)
                .toList();
        GasOrigin spoiling = spoiling(group, ends);
        if (!spoiling.isClean()) {
            volumes(group).forEach(node -> bench.spoils(node, bench.cell(node)));
        }
        Set<String> onTheWay = new HashSet<>();
        for (End sink : sinks) {
            onTheWay.addAll(through(high, sink));
        }
        // the rest: everything where nothing goes through, otherwise the side branches
        List<String> order = paths.order(List.of(high.edge().node()), group.nodes());
        End taker = sinks.isEmpty() ? high : sinks.get(0);
        for (String node : order) {
            if (!OpenPaths.isJoint(node) && !onTheWay.contains(node)) {
                double pascals = sinks.isEmpty() ? high.pascals() : pressureBeside(node, onTheWay, high);
                bring(node, pascals, high, taker);
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
    private double pressureBeside(String node, Set<String> onTheWay, End high) {
        for (String near : paths.order(List.of(node), paths.nodes())) {
            if (onTheWay.contains(near)) {
                return OpenPaths.isJoint(near) ? high.pascals() : bench.cell(near).pascals;
            }
        }
        return high.pascals();
    }

    /** The worst gas of a cylinder to which these volumes are joined without certain flow towards it; they count as mixed from then on. */
    private GasOrigin spoiling(Group group, List<End> ends) {
        double highest = Math.max(
                ends.get(ends.size() - 1).pascals(),
                volumes(group).stream()
                        .mapToDouble(node -> bench.cell(node).pascals)
                        .max()
                        .orElse(0));
        GasOrigin worst = GasOrigin.NONE;
        for (End end : ends) {
            Cell cylinder = bench.cells.get(end.name());
            boolean unclean = cylinder != null && cylinder.holdsRefrigerant() && !cylinder.origin.isClean();
            if (unclean && highest - end.pascals() <= HookUp.certainPa()) {
                worst = worst.with(cylinder.origin);
            }
        }
        return worst;
    }

    /** Lets gas go through from a higher end to a lower one; returns the nodes on the way. */
    private List<String> through(End high, End low) {
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
        misuse(high, low, throttled);
        boolean dirty = volumes.stream()
                .map(bench::cell)
                .anyMatch(cell ->
                        cell.holdsAir() || cell.holdsRefrigerant() && !cell.origin.isClean() && !isOwn(cell, high));
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
                high.name(), low.name(), amount * (1 - share), amount * share + airWith(high, amount), high.liquid());
        if (toAir) {
            ventedEnough(high, volumes, dirty && sweeps, amount);
        }
        return nodes;
    }

    private static double sweepPa() {
        return Pressure.ofBars(HookUpPractice.SWEEP_ABOVE_ATMOSPHERE_BAR.value())
                .pascals();
    }

    private void ventedEnough(End high, List<String> volumes, boolean neededSweep, double kilograms) {
        boolean coupling = volumes.isEmpty() && (act.kind() == Act.Kind.CRACK || act.kind() == Act.Kind.OPEN_SHORT);
        boolean least = neededSweep && kilograms * 1000 <= HookUpPractice.MOST_SWEPT_G.value();
        if (high.liquid() || !(coupling || least)) {
            bench.breaks(Invariant.VENTED_ABOVE_LEAST, high.name());
        }
    }

    private void misuse(End high, End low, boolean throttled) {
        Cell cylinder = bench.cells.get(high.name());
        boolean holds = cylinder == null ? parts.port(high.name()).isPresent() : cylinder.holdsRefrigerant();
        if (low.name().equals(HookUp.PUMP) && holds) {
            bench.breaks(Invariant.MACHINE_MISUSED, HookUp.PUMP);
        }
        if (low.name().equals(SystemPort.Role.LOW_SIDE.code()) && high.liquid()) {
            boolean metered = throttled && (act.kind() == Act.Kind.CRACK || act.kind() == Act.Kind.OPEN_SHORT);
            if (!hookUp.running() || !metered) {
                bench.breaks(Invariant.UNMETERED_LIQUID_INTO_SUCTION, low.name());
            }
        }
    }

    /** What was in a volume is driven on; above the narrowest place it then holds what comes, below it what is left of that as vapour. */
    private void replace(String node, End high, End low, boolean upstream) {
        Cell cell = bench.cell(node);
        boolean liquid = upstream && high.liquid();
        if (!isOwn(cell, high) || cell.holdsAir() || cell.liquid && !liquid) {
            bench.move(node, low.name(), cell.refrigerant, cell.air, cell.liquid);
            cell.liquid = false;
            cell.pascals = 0;
        }
        double pascals = upstream ? high.pascals() : low.pascals();
        if (cell.pascals > pascals + EQUAL_PA) {
            lower(node, pascals, low);
        }
        fill(node, pascals, high, liquid);
    }

    private boolean isOwn(Cell cell, End high) {
        Cell cylinder = bench.cells.get(high.name());
        return cell.origin == (cylinder == null ? GasOrigin.SYSTEM : cylinder.origin)
                && !high.name().equals(HookUp.AIR);
    }

    private double amount(End high, End low, double sweptSize, boolean coupling) {
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

    /** The air that goes with vapour out of a cylinder that holds air. */
    private double airWith(End giver, double refrigerant) {
        Cell cell = bench.cells.get(giver.name());
        if (cell == null || giver.liquid() || !cell.holdsAir() || !cell.holdsRefrigerant()) {
            return 0;
        }
        double space = cell.liquid
                ? Math.max(cell.size - cell.refrigerant / law.liquidDensity(cell.kelvins), cell.size / 1000)
                : cell.size;
        double vapour = Math.min(law.vapourDensity(law.saturationPa(cell.kelvins)) * space, cell.refrigerant);
        return cell.air * Math.min(1, refrigerant / vapour);
    }

    /** Brings a dead end to a pressure: out to the taker where it stands higher, in from the giver where lower. */
    private void bring(String node, double pascals, End giver, End taker) {
        Cell cell = bench.cell(node);
        if (taker.name().equals(HookUp.PUMP) && giver.name().equals(HookUp.PUMP)) {
            if (cell.liquid) {
                bench.breaks(Invariant.VENTED_ABOVE_LEAST, node);
            }
            bench.move(node, HookUp.PUMP, cell.refrigerant, cell.air, cell.liquid);
            cell.pascals = 0;
            cell.liquid = false;
        } else if (cell.pascals > pascals + EQUAL_PA) {
            lower(node, pascals, taker);
        } else if (cell.pascals < pascals - EQUAL_PA) {
            fill(node, pascals, giver, giver.liquid());
        } else if (act.kind() == Act.Kind.WAIT && cell.holdsRefrigerant()) {
            bench.cell(node).kelvins = law.ambientK();
            afterWait(node, pascals, giver);
        }
    }

    /** Open to one end for long: liquid gathers in the colder part. */
    private void afterWait(String node, double pascals, End end) {
        Cell cell = bench.cell(node);
        double saturation = law.saturationPa(law.ambientK());
        boolean refrigerantBehind =
                !end.name().equals(HookUp.AIR) && !end.name().equals(HookUp.PUMP);
        if (refrigerantBehind && !cell.holdsAir() && pascals > saturation * 1.001) {
            cell.pascals = 0;
            fill(node, pascals, new End(end.edge(), pascals, true, law.ambientK()), true);
        } else if (cell.liquid && pascals < saturation * 0.999) {
            dry(node, pascals, end);
        }
    }

    private void lower(String node, double pascals, End taker) {
        Cell cell = bench.cell(node);
        if (!cell.liquid) {
            double kept = kept(cell, pascals);
            bench.move(node, taker.name(), cell.refrigerant * (1 - kept), cell.air * (1 - kept), false);
            cell.pascals = pascals;
        } else if (pascals >= law.saturationPa(cell.kelvins)) {
            cell.pascals = pascals;
        } else if (bench.cells.containsKey(taker.name())) {
            // the cold of flashing keeps a part liquid until the hose is warm again
            double left = HookUpPractice.LIQUID_LEFT_IN_HOSE.value();
            double held =
                    cell.size * (left * law.liquidDensity(cell.kelvins) + (1 - left) * law.vapourDensity(pascals));
            bench.move(node, taker.name(), cell.refrigerant - held, cell.air * (1 - left), true);
            cell.pascals = pascals;
        } else {
            if (taker.name().equals(SystemPort.Role.LOW_SIDE.code()) && (!hookUp.running() || !throttledTo(taker))) {
                bench.breaks(Invariant.UNMETERED_LIQUID_INTO_SUCTION, taker.name());
            }
            dry(node, pascals, taker);
        }
    }

    /** A whole group drains through whatever valve of it is cracked. */
    private boolean throttledTo(End taker) {
        Group group = paths.groups().stream()
                .filter(each -> each.nodes().contains(taker.edge().node()))
                .findFirst()
                .orElseThrow();
        return paths.throttledWithin(group.nodes());
    }

    private void dry(String node, double pascals, End taker) {
        Cell cell = bench.cell(node);
        double vapour = law.vapourDensity(pascals) * cell.size;
        bench.move(node, taker.name(), cell.refrigerant - vapour, cell.air, cell.liquid);
        if (taker.name().equals(HookUp.AIR) && cell.liquid) {
            bench.breaks(Invariant.VENTED_ABOVE_LEAST, node);
        }
        cell.liquid = false;
        cell.pascals = pascals;
    }

    /** The part of a mixed gas that is left as its pressure falls. */
    private double kept(Cell cell, double pascals) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < 50; i++) {
            double middle = (low + high) / 2;
            double at = law.pressure(cell.refrigerant * middle, cell.air * middle, cell.size, cell.kelvins);
            low = at < pascals ? middle : low;
            high = at < pascals ? high : middle;
        }
        return low;
    }

    private void fill(String node, double pascals, End giver, boolean liquid) {
        Cell cell = bench.cell(node);
        if (giver.name().equals(HookUp.AIR)) {
            bench.move(HookUp.AIR, node, 0, law.airKg(pascals - cell.pascals, cell.size), false);
            cell.pascals = pascals;
            return;
        }
        Cell source = bench.cells.get(giver.name());
        double airSpace = Math.min(law.airVolume(cell.air, Math.max(pascals, 1)), cell.size);
        double target = liquid
                ? law.liquidDensity(giver.kelvins()) * (cell.size - airSpace)
                : law.vapourDensity(pascals) * (cell.size - airSpace);
        double need = Math.max(0, target - cell.refrigerant);
        if (source != null && !source.holdsRefrigerant()) {
            bench.move(
                    giver.name(), node, 0, Math.min(source.air, law.airKg(pascals - cell.pascals, cell.size)), false);
        } else {
            bench.move(giver.name(), node, need, airWith(giver, need), liquid);
        }
        cell.pascals = pascals;
        if (liquid) {
            cell.liquid = true;
            cell.kelvins = giver.kelvins();
        }
    }

    /** At the pressure of the air nothing keeps the air out: at once where an end is off, after one act where a joint is loose. */
    private void leftOpen(Group group) {
        boolean wide = group.nodes().stream().anyMatch(paths::isWide);
        for (String node : volumes(group)) {
            Cell cell = bench.cell(node);
            boolean still = Math.abs(bench.before(node) - atmospherePa) <= EQUAL_PA;
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
        Optional<End> into = outlet.ends().stream()
                .filter(edge -> bench.cells.containsKey(edge.other()))
                .map(this::end)
                .findFirst();
        if (into.isEmpty()) {
            bench.breaks(Invariant.MACHINE_MISUSED, HookUp.MACHINE);
            return;
        }
        End to = into.get();
        Optional<End> from = inlet.ends().stream()
                .filter(edge -> !edge.other().equals(HookUp.PUMP))
                .map(this::end)
                .findFirst();
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
        End source = from.get();
        volumes(inlet).forEach(node -> fill(node, source.pascals(), source, source.liquid()));
        volumes(outlet).forEach(node -> fill(node, to.pascals(), source, false));
        Cell taker = bench.cell(to.name());
        double room = Math.max(0, law.liquidDensity(taker.kelvins) * taker.size - taker.refrigerant);
        boolean air = source.name().equals(HookUp.AIR);
        double usual = HookUpPractice.LIQUID_PER_OPENING_G.value() / 1000;
        double amount =
                Math.min(room, act.amount().map(mass -> mass.kilograms()).orElse(usual));
        bench.move(source.name(), to.name(), air ? 0 : amount, air ? amount : 0, source.liquid());
    }

    private Group groupOf(String node) {
        return paths.groups().stream()
                .filter(group -> group.nodes().contains(node))
                .findFirst()
                .orElseThrow();
    }
}

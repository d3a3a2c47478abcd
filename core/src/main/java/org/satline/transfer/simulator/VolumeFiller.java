package org.satline.transfer.simulator;

import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.GasLaw;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpPractice;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.simulator.HookUpBench.Cell;
import org.satline.transfer.simulator.OpenPaths.Edge;

/**
 * Brings one volume to a pressure: filled from where the pressure comes, or let down to where it goes.
 */
final class VolumeFiller {
    /** Pressures closer than this count as equal, Pa. */
    static final double EQUAL_PA = 200;

    private final HookUpBench bench;
    private final Layout parts;
    private final GasLaw law;
    private final OpenPaths paths;
    private final Act act;

    VolumeFiller(HookUpBench bench, OpenPaths paths, Act act) {
        this.bench = bench;
        this.parts = bench.parts;
        this.law = bench.law;
        this.paths = paths;
        this.act = act;
    }

    /** The air that goes with vapour out of a cylinder that holds air. */
    double airWith(PathEnd giver, double refrigerant) {
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
    void bring(String node, double pascals, PathEnd giver, PathEnd taker) {
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
        } else if (giver.equals(taker)
                && giver.liquid()
                && !cell.liquid
                && !cell.holdsAir()
                && giver.kelvins() >= cell.kelvins) {
            // at one pressure liquid still comes by its weight, but for a warmer part, where it boils
            fill(node, pascals, giver, true);
        } else if (act.kind() == Act.Kind.WAIT && cell.holdsRefrigerant()) {
            bench.cell(node).kelvins = law.ambientK();
            afterWait(node, pascals, giver);
        }
    }

    /** Open to one end for long: liquid gathers in the colder part. */
    private void afterWait(String node, double pascals, PathEnd end) {
        Cell cell = bench.cell(node);
        double saturation = law.saturationPa(law.ambientK());
        boolean refrigerantBehind =
                !end.name().equals(HookUp.AIR) && !end.name().equals(HookUp.PUMP);
        if (refrigerantBehind && !cell.holdsAir() && pascals > saturation * 1.001) {
            cell.pascals = 0;
            fill(node, pascals, new PathEnd(end.edge(), pascals, true, law.ambientK()), true);
        } else if (cell.liquid && pascals < saturation * 0.999) {
            dry(node, pascals, end);
        }
    }

    /** Lets a volume down to a pressure: gas expands, liquid flashes. */
    void lower(String node, double pascals, PathEnd taker) {
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
            if (taker.name().equals(SystemPort.Role.LOW_SIDE.code())
                    && (!parts.hookUp.running() || !isThrottled(node, taker))) {
                bench.breaks(Invariant.UNMETERED_LIQUID_INTO_SUCTION, taker.name());
            }
            dry(node, pascals, taker);
        }
    }

    private boolean isThrottled(String node, PathEnd taker) {
        Edge start = new Edge(node, node, "", /* throttled= */ false);
        return paths.path(start, taker.edge()).stream().anyMatch(Edge::throttled);
    }

    private void dry(String node, double pascals, PathEnd taker) {
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

    /** Fills a volume up to a pressure around the air that is in it. */
    void fill(String node, double pascals, PathEnd giver, boolean liquid) {
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
}

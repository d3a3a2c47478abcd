package org.satline.simulation;

import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.satline.simulation.Cycle.Parts;
import org.satline.simulation.Cycle.Surroundings;

/**
 * Finds the steady state by three nested searches, each on a function that nearly always runs one way: superheat balances the evaporator,
 * evaporating pressure balances metering device and compressor, condensing pressure balances the charge. At a fixed orifice in cold weather
 * the charge may turn; a search that ends on no balance is refused.
 */
final class Balance {
    static final double WETTEST = -90;
    private static final double SUPERHEAT_ACCURACY = 1e-7;
    private static final double PRESSURE_ACCURACY = 1e-9;

    private final Parts parts;
    private final Surroundings around;
    private final double lowestLog;
    private final double highestLog;

    Balance(Parts parts, Surroundings around) {
        this.parts = parts;
        this.around = around;
        lowestLog = Math.log(parts.fluid().lowPa());
        highestLog = Math.log(parts.fluid().dewPressure(around.returnAir().dryBulbK() - 1));
    }

    /** Pressures, Pa, and superheat, K, with the cycle there. */
    record Point(double evaporatingPa, double condensingPa, double superheatK, Cycle cycle) {}

    Point withCharge(double charge) {
        double low = Math.log(parts.fluid().bubblePressure(around.outdoorK() + 0.3));
        double high = Math.log(
                parts.fluid().highPa() - around.fault().nonCondensable().pascals());
        DoubleUnaryOperator excess = log -> excessCharge(Math.exp(log), charge);
        double least = excess.applyAsDouble(low);
        if (!(least < 0)) {
            throw none("the condenser empties", charge);
        }
        if (!(excess.applyAsDouble(high) > 0)) {
            throw none(
                    "the head pressure would pass the range of the simulation; in life the high-pressure switch opens",
                    charge);
        }
        double log = new BrentSolver(1e-12, PRESSURE_ACCURACY).solve(200, excess::applyAsDouble, low, high);
        Point point = balanced(Math.exp(log));
        if (!(Math.abs(point.cycle.charge() / charge - 1) < 1e-4)) {
            throw none("the charge does not fit any balanced state", charge);
        }
        return point;
    }

    private NoSteadyStateException none(String why, double charge) {
        return new NoSteadyStateException(String.format(
                Locale.ROOT, "no steady state with %.3f kg at %.1f degC outdoors: %s", charge, celsius(), why));
    }

    private double celsius() {
        return org.satline.quantity.Temperature.ofKelvins(around.outdoorK()).celsius();
    }

    /** Where flows cannot balance the sign still tells on which side of the steady state this pressure lies. */
    private double excessCharge(double condensingPa, double charge) {
        if (flowExcess(lowestLog, condensingPa) <= 0) {
            return -1; // even at the lowest evaporating pressure the metering device starves: too little head
        }
        if (flowExcess(highestLog, condensingPa) >= 0) {
            return 1;
        }
        return balanced(condensingPa).cycle.charge() / charge - 1;
    }

    private Point balanced(double condensingPa) {
        double log = new BrentSolver(1e-12, PRESSURE_ACCURACY)
                .solve(200, l -> flowExcess(l, condensingPa), lowestLog, highestLog);
        double superheat = superheat(Math.exp(log), condensingPa);
        return new Point(
                Math.exp(log),
                condensingPa,
                superheat,
                Cycle.at(parts, around, Math.exp(log), condensingPa, superheat));
    }

    private double flowExcess(double evaporatingLog, double condensingPa) {
        double pa = Math.exp(evaporatingLog);
        Cycle cycle = Cycle.at(parts, around, pa, condensingPa, superheat(pa, condensingPa));
        return (cycle.meteredFlow() - cycle.flow()) / parts.ratedFlow();
    }

    private double superheat(double evaporatingPa, double condensingPa) {
        double most = around.returnAir().dryBulbK() - parts.fluid().dewK(evaporatingPa);
        DoubleUnaryOperator excess = superheat ->
                Cycle.at(parts, around, evaporatingPa, condensingPa, superheat).suctionExcess();
        double atMost = excess.applyAsDouble(most);
        if (atMost >= 0) {
            return most;
        }
        if (excess.applyAsDouble(WETTEST) <= 0) {
            return WETTEST;
        }
        return new BrentSolver(1e-12, SUPERHEAT_ACCURACY).solve(200, excess::applyAsDouble, WETTEST, most);
    }
}

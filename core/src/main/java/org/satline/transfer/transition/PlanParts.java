package org.satline.transfer.transition;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
import org.satline.transfer.hookup.GasLaw;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpPractice;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.ServiceCylinder;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.hookup.VolumeState;

/** The parts of a hook-up as the planner sees them: numbered, with the few levels of pressure that occur. Immutable, thread-safe. */
public final class PlanParts extends PlanNetwork {
    /** What is behind a connection. */
    public enum Behind {
        /** A port of the system. */
        PORT,
        /** A chamber of the manifold or a side of the recovery machine. */
        VOLUME,
        /** A cylinder. */
        CYLINDER,
        /** The vacuum pump. */
        PUMP
    }

    /** The number of what is not there. */
    public static final int NONE = -1;

    /** The chamber of the manifold at the low side. */
    public static final int CHAMBER_LOW = 0;
    /** The chamber at the high side. */
    public static final int CHAMBER_HIGH = 1;
    /** The chamber in the middle. */
    public static final int CHAMBER_CENTRE = 2;

    final GasLaw law;
    /** Pressures that occur, rising, Pa. */
    final double[] levels;

    final int airLevel;
    final int[] portLevel;
    final boolean[] portCold;
    final boolean[] portSurelyCold;
    /** Saturation pressure so far below the temperature of the air that it does not count as equal, Pa. */
    final double surelyColderPa;

    /** The pressure that each cylinder's contents have once it holds liquid, and the least that certainly feeds it, Pa. */
    final int[] restLevel;

    final double[] feedsPa;
    /** Saturation pressure at the temperature of the air around, Pa. */
    final double ambientPa;

    /** From here up liquid that comes from the system certainly does not flash, Pa. */
    final double staysLiquidPa;

    /** Below this liquid of the system or of a source certainly flashes, Pa. */
    final double flashesPa;

    /**
     * Numbers the parts.
     *
     * @param hookUp the hook-up
     * @param state how it stands: the pressures that occur in it
     */
    public PlanParts(HookUp hookUp, HookUpState state) {
        super(Objects.requireNonNull(hookUp, "hookUp"));
        Parts.required("state", state);
        law = hookUp.law();
        ambientPa = hookUp.gas().properties().bubblePressurePa(hookUp.ambient().kelvins());
        double coldest = hookUp.ports().stream()
                .filter(SystemPort::liquid)
                .mapToDouble(port -> port.temperature().kelvins())
                .reduce(hookUp.ambient().kelvins(), Math::min);
        staysLiquidPa = hookUp.gas().properties().bubblePressurePa(coldest) + HookUp.certainPa();
        double coldestLiquid = DoubleStream.concat(
                        hookUp.ports().stream()
                                .filter(SystemPort::liquid)
                                .mapToDouble(port -> port.temperature().kelvins()),
                        cylinders.stream()
                                .filter(each -> each.use() != ServiceCylinder.Use.RECEIVER)
                                .mapToDouble(each ->
                                        state.volume(each.name()).temperature().kelvins()))
                .min()
                .orElse(coldest);
        flashesPa =
                hookUp.gas().properties().bubblePressurePa(coldestLiquid + HookUpPractice.EQUAL_TEMPERATURES_K.value());
        levels = levels(state);
        airLevel = level(hookUp.atmosphere().pressure().pascals());
        portLevel = ports.stream()
                .mapToInt(port -> level(port.pressure().pascals()))
                .toArray();
        double surelyCold = hookUp.ambient().kelvins() - HookUpPractice.EQUAL_TEMPERATURES_K.value();
        surelyColderPa = hookUp.gas().properties().bubblePressurePa(surelyCold);
        portCold = new boolean[ports.size()];
        portSurelyCold = new boolean[ports.size()];
        for (int i = 0; i < portCold.length; i++) {
            portCold[i] = ports.get(i).temperature().compareTo(hookUp.ambient()) < 0;
            portSurelyCold[i] = ports.get(i).temperature().kelvins() < surelyCold;
        }
        restLevel = cylinders.stream()
                .mapToInt(each -> level(saturationPa(state.volume(each.name()), 0)))
                .toArray();
        feedsPa = cylinders.stream()
                .mapToDouble(each -> feedsPa(state.volume(each.name())))
                .toArray();
    }

    /**
     * {@return how things stand as the search begins}
     *
     * @param state the same by names
     */
    public PlanState arrival(HookUpState state) {
        Parts.required("state", state);
        return PlanArrival.of(this, state);
    }

    private double[] levels(HookUpState state) {
        TreeSet<Double> all =
                new TreeSet<>(List.of(0.0, hookUp.atmosphere().pressure().pascals(), ambientPa));
        ports.forEach(port -> all.add(port.pressure().pascals()));
        state.volumes().values().forEach(volume -> all.add(volume.pressure().pascals()));
        cylinders.forEach(each -> all.add(saturationPa(state.volume(each.name()), 0)));
        List<Double> apart = new ArrayList<>();
        for (double pascals : all) {
            // gauges do not tell less than a few hundred pascals apart
            if (apart.isEmpty() || pascals - apart.get(apart.size() - 1) > 300) {
                apart.add(pascals);
            }
        }
        return apart.stream().mapToDouble(Double::doubleValue).toArray();
    }

    int level(double pascals) {
        int at = Arrays.binarySearch(levels, pascals);
        int below = at >= 0 ? at : -at - 2;
        return Math.max(below, 0);
    }

    private double saturationPa(VolumeState cylinder, double warmerK) {
        return hookUp.gas().properties().bubblePressurePa(cylinder.temperature().kelvins() + warmerK);
    }

    /** What stands above a cylinder's pressure in spite of errors of the gauges and of less than 3 K. */
    private double feedsPa(VolumeState cylinder) {
        double own = cylinder.pressure().pascals();
        double apart = HookUp.certainPa();
        if (cylinder.refrigerant().kilograms() > 0) {
            double three =
                    saturationPa(cylinder, HookUpPractice.EQUAL_TEMPERATURES_K.value()) - saturationPa(cylinder, 0);
            apart = Math.max(apart, three);
        }
        return own + apart;
    }

    /**
     * {@return whether one level stands above another in spite of the errors of both gauges}
     *
     * @param above a level of pressure
     * @param below another
     */
    public boolean certain(int above, int below) {
        return levels[above] - levels[below] > HookUp.certainPa();
    }

    /**
     * {@return whether vapour of that level drives the air out of a loose joint}
     *
     * @param level a level of pressure
     */
    public boolean sweeps(int level) {
        double more = Pressure.ofBars(HookUpPractice.SWEEP_ABOVE_ATMOSPHERE_BAR.value())
                .pascals();
        return levels[level] - levels[airLevel] > more;
    }

    double vapourGrams(double litres, int level) {
        return litres * hookUp.gas().properties().vapourDensity(levels[level]);
    }

    /**
     * {@return the level of its pressure}
     *
     * @param port a port
     */
    public int portLevel(int port) {
        return portLevel[port];
    }

    /**
     * {@return what certainly feeds it, Pa}
     *
     * @param cylinder a cylinder
     */
    public double feedsPa(int cylinder) {
        return feedsPa[cylinder];
    }
}

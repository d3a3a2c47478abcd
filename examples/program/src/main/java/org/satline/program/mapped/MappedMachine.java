package org.satline.program.mapped;

import java.util.Optional;
import java.util.Random;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationNumbers;

/**
 * One machine: given charge, air and trouble it tells what its ports show. Fluid properties by the saturation curve
 * alone. Unknown are evaporating and condensing
 * temperature, the flooded share of the condenser and the dry share of the evaporator; heat of both coils, flow and
 * charge make four balances. Its constants are
 * no machine's; use it for proof, never to charge a real one. Immutable, thread-safe.
 */
public final class MappedMachine {
    private static final double ZERO_CELSIUS_K = Temperature.ofCelsius(0).kelvins();

    /**
     * Heat capacity of superheated vapour and its fall with superheat on the discharge side: share of that at the dew
     * line; our choice.
     */
    private static final double HOT_SHARE = 0.85;

    private static final double AIR_EXPONENT = 0.5;
    private static final double WORST_FLOODED = 0.92;

    private final Build build;
    private final SaturationNumbers fluid;
    private final Sizes sizes;

    private MappedMachine(Build build, SaturationNumbers fluid, Sizes sizes) {
        this.build = build;
        this.fluid = fluid;
        this.sizes = sizes;
    }

    /** What follows from the rating point. */
    private record Sizes(
            double flow,
            double powerW,
            double condenserAir,
            double subcoolingUnits,
            double superheatUnits,
            double evaporatorAir,
            double resistance,
            double metering,
            double charge) {}

    /**
     * Where it runs: evaporating dew point and condensing bubble point, K, liquid share of the condenser, dry share
     * of the evaporator; below 0 they count vapour and liquid that leave.
     */
    private record Point(double evaporatingK, double condensingK, double flooded, double dried) {}

    /** One trial, with what does not balance. */
    @SuppressWarnings("ArrayRecordComponent") // handed to the solver, never compared
    private record Trial(
            double[] excess, double subcoolingK, double superheatK, double dischargeK, double supplyK, double charge) {}

    /**
     * Draws a machine.
     *
     * @param random source of its constants
     * @param fluid saturation of its refrigerant
     * @return the machine; empty where the drawn one cannot be built
     */
    public static Optional<MappedMachine> drawn(Random random, SaturationNumbers fluid) {
        Build build = Build.drawn(random);
        MappedMachine machine = new MappedMachine(build, fluid, sized(build, fluid));
        boolean stands = machine.sizes.charge > 0
                && machine.sizes.resistance > 0
                && machine.at(1, Air.RATED, Trouble.NONE).isPresent();
        return stands ? Optional.of(machine) : Optional.empty();
    }

    /**
     * Tells what meters the refrigerant.
     *
     * @return true for a thermostatic valve, false for a capillary
     */
    public boolean valve() {
        return build.valve();
    }

    /**
     * Returns the right charge.
     *
     * @return kg
     */
    public double ratedChargeKg() {
        return sizes.charge;
    }

    /**
     * Returns the subcooling at the rating point.
     *
     * @return K
     */
    public double ratedSubcoolingK() {
        return build.subcoolingK();
    }

    private static Sizes sized(Build build, SaturationNumbers fluid) {
        double evaporating = build.evaporatingC() + ZERO_CELSIUS_K;
        double outdoor = Air.RATED.outdoor() + ZERO_CELSIUS_K;
        double condensing = outdoor + build.approachK();
        double liquid = fluid.bubbleLiquidEnthalpy(condensing - build.subcoolingK());
        double vapour = fluid.dewVapourEnthalpy(evaporating);
        double suction = vapour + build.superheatK() * fluid.dewVapourIsobaricHeatCapacity(evaporating);
        double flow = build.capacityW() / (suction - liquid);
        double power = build.capacityW() * (condensing - evaporating) / evaporating / build.carnot();
        double rejected = build.capacityW() + build.kept() * power;
        double effective = (1 - Math.exp(-build.condenserNtu())) * (1 - build.flooded());
        double subcoolingUnits = -Math.log(1 - build.subcoolingK() / build.approachK()) / build.flooded();
        double most = Air.RATED.dryBulb() + ZERO_CELSIUS_K - evaporating;
        double superheatUnits = -Math.log(1 - build.superheatK() / most) / build.dried();
        // sensible heat fixes the airflow: its split is the usual 10 to 11 K
        double evaporatorAir = build.sensible() * build.capacityW() / 11;
        double surface = surfaceC(build, evaporatorAir / 1.02, build.capacityW());
        double resistance = (surface - build.evaporatingC()) / build.capacityW();
        Sizes open = new Sizes(
                flow,
                power,
                rejected / (effective * build.approachK()),
                subcoolingUnits,
                superheatUnits,
                evaporatorAir,
                resistance,
                1,
                1);
        MappedMachine trial = new MappedMachine(build, fluid, open);
        Point rated = new Point(evaporating, condensing, build.flooded(), build.dried());
        double area = flow / trial.metered(rated, flow, build.subcoolingK(), build.superheatK(), Trouble.NONE);
        double charge = trial.held(rated, build.subcoolingK());
        return new Sizes(
                flow,
                power,
                open.condenserAir,
                subcoolingUnits,
                superheatUnits,
                evaporatorAir,
                resistance,
                area,
                charge);
    }

    /** Temperature of the coil's surface that takes up the rated heat from the rated air, degC. */
    private static double surfaceC(Build build, double airKjPerK, double heatW) {
        double target =
                Air.saturated(Air.RATED.wetBulb()) - heatW / airKjPerK / ((1 - build.bypass()) * (1 - build.dried()));
        double celsius = 10;
        for (int i = 0; i < 30; i++) {
            celsius -= (Air.saturated(celsius) - target) / (1.5365 + 0.0914 * Math.max(-5, celsius));
        }
        return celsius;
    }

    /**
     * What the machine shows.
     *
     * @param share charge over the right charge
     * @param air air at both coils
     * @param trouble what is wrong beside the charge
     * @return what it shows; empty where nothing balances in the usual range
     */
    public Optional<Running> at(double share, Air air, Trouble trouble) {
        double[] x = {
            build.evaporatingC() + ZERO_CELSIUS_K,
            air.outdoor() + ZERO_CELSIUS_K + build.approachK(),
            build.flooded(),
            build.dried()
        };
        double[] solved =
                new Balances(trial -> at(point(trial), share, air, trouble).excess(), this::inside).from(x);
        if (solved.length == 0) {
            return Optional.empty();
        }
        Point point = point(solved);
        return Optional.of(shown(point, at(point, share, air, trouble), trouble));
    }

    private static Point point(double[] x) {
        return new Point(x[0], x[1], x[2], x[3]);
    }

    private boolean inside(double[] x) {
        return x[0] > 245
                && x[0] < 300
                && x[1] > x[0] + 8
                && x[1] < fluid.maxTemperatureK() - 6
                && x[2] > -0.9
                && x[2] < WORST_FLOODED
                && x[3] > -0.9
                && x[3] < 0.97;
    }

    private Trial at(Point at, double share, Air air, Trouble trouble) {
        double te = at.evaporatingK();
        double tc = at.condensingK();
        double most = Math.max(0.1, air.dryBulb() + ZERO_CELSIUS_K - te);
        double overAir = Math.max(0.1, tc - air.outdoor() - ZERO_CELSIUS_K);
        double discharge =
                trouble.gasPa() > 0 ? fluid.bubbleTemperatureK(fluid.bubblePressurePa(tc) + trouble.gasPa()) : tc;
        double superheat = at.dried() > 0 ? most * -Math.expm1(-sizes.superheatUnits * at.dried()) : 0;
        double leaving = 1 + Math.min(0, at.dried());
        double flow = flow(te, discharge, superheat) * (1 - trouble.leak()) / Math.sqrt(leaving);
        double passing = Math.pow(1 - trouble.condenserAirLost(), AIR_EXPONENT);
        double share1 = flow / sizes.flow;
        double subcooling = at.flooded() > 0
                ? overAir * -Math.expm1(-sizes.subcoolingUnits * at.flooded() * passing / Math.max(0.2, share1))
                : 0;
        double latentC = fluid.dewVapourEnthalpy(tc) - fluid.bubbleLiquidEnthalpy(tc);
        double out = at.flooded() > 0
                ? fluid.bubbleLiquidEnthalpy(tc - subcooling)
                : fluid.bubbleLiquidEnthalpy(tc) - at.flooded() * latentC;
        double vapour = fluid.dewVapourEnthalpy(te);
        double latentE = vapour - fluid.bubbleLiquidEnthalpy(te);
        double suction = at.dried() > 0
                ? vapour + superheat * fluid.dewVapourIsobaricHeatCapacity(te)
                : vapour + at.dried() * latentE;
        double gas = suction + build.kept() * power(te, discharge, trouble) / flow;
        double rejected = condenser(at, overAir, trouble);
        double cooled = evaporator(at, air, trouble);
        double metered = metered(at, flow, subcooling, superheat, trouble);
        double charge = held(at, subcooling);
        // no colder than saturated: wet gas stays at the condensing temperature
        double hotK = Math.max(
                discharge,
                tc + (gas - fluid.dewVapourEnthalpy(tc)) / (HOT_SHARE * fluid.dewVapourIsobaricHeatCapacity(tc)));
        double[] excess = {
            (flow * (suction - out) - cooled) / build.capacityW(),
            (flow * (gas - out) - rejected) / build.capacityW(),
            (metered - flow) / sizes.flow,
            charge / sizes.charge - share
        };
        return new Trial(excess, subcooling, superheat, hotK, supplyK(at, air, trouble, cooled), charge);
    }

    /** By a polynomial in both temperatures, as compressors are published; less for each kelvin of superheat. */
    private double flow(double te, double tc, double superheat) {
        double x = te - ZERO_CELSIUS_K - build.evaporatingC();
        double y = tc - 308.15 - build.approachK();
        double map = 1
                + build.mapSuction() * x
                + 0.5 * build.mapSuction() * build.mapSuction() * x * x
                + build.mapDischarge() * y
                - 0.00012 * x * y;
        return sizes.flow * Math.max(0.05, map) * (1 - 0.0038 * (superheat - build.superheatK()));
    }

    private double power(double te, double tc, Trouble trouble) {
        double x = te - ZERO_CELSIUS_K - build.evaporatingC();
        double y = tc - 308.15 - build.approachK();
        double map = 1 + 0.004 * x + build.powerDischarge() * y + 0.0003 * x * y;
        return sizes.powerW * Math.max(0.1, map) * (1 - 0.7 * trouble.leak());
    }

    private double condenser(Point at, double overAir, Trouble trouble) {
        double lost = 1 - trouble.condenserAirLost();
        double passed = 1 - Math.exp(-build.condenserNtu() * Math.pow(lost, AIR_EXPONENT - 1));
        return sizes.condenserAir * lost * passed * (1 - Math.max(0, at.flooded())) * overAir;
    }

    /** Wet where the surface lies below the dew point of the air, which the larger of both heats tells. */
    private double evaporator(Point at, Air air, Trouble trouble) {
        double te = at.evaporatingK() - ZERO_CELSIUS_K;
        double lost = 1 - trouble.evaporatorAirLost();
        double touched = 1 - Math.pow(build.bypass(), Math.pow(lost, AIR_EXPONENT - 1));
        double flow = sizes.evaporatorAir * lost;
        double active = 1 - Math.max(0, at.dried());
        double slope = 1.5365 + 0.0914 * Math.max(-5, (te + air.wetBulb()) / 2);
        double wet = flow / 1.02 * touched * active;
        double wetHeat =
                wet * (Air.saturated(air.wetBulb()) - Air.saturated(te)) / (1 + wet * slope * sizes.resistance);
        double dry = flow * touched * active;
        double dryHeat = dry * (air.dryBulb() - te) / (1 + dry * sizes.resistance);
        return Math.max(wetHeat, dryHeat);
    }

    private double supplyK(Point at, Air air, Trouble trouble, double cooled) {
        double surface = at.evaporatingK() - ZERO_CELSIUS_K + cooled * sizes.resistance;
        double lost = 1 - trouble.evaporatorAirLost();
        double touched = 1 - Math.pow(build.bypass(), Math.pow(lost, AIR_EXPONENT - 1));
        double active = 1 - Math.max(0, at.dried());
        double split = touched * active * Math.max(0, air.dryBulb() - surface);
        return air.dryBulb() - split + build.blowerK() + ZERO_CELSIUS_K;
    }

    /**
     * Valve: bulb against evaporator and spring. Capillary: a power of the pressure and a line in subcooling, held
     * back by vapour at its inlet.
     */
    private double metered(Point at, double flow, double subcooling, double superheat, Trouble trouble) {
        double high = fluid.bubblePressurePa(at.condensingK()) + trouble.gasPa();
        double low = fluid.dewPressurePa(at.evaporatingK());
        double share = flow / sizes.flow;
        double lostPa = trouble.restrictionPa() * share * share;
        double inlet = Math.max(low * 1.02, high - lostPa);
        double own = inlet - trouble.gasPa();
        double left = subcooling - (lostPa > 0 ? at.condensingK() - fluid.bubbleTemperatureK(Math.max(low, own)) : 0);
        double latent = fluid.dewVapourEnthalpy(at.condensingK()) - fluid.bubbleLiquidEnthalpy(at.condensingK());
        double heat = fluid.bubbleLiquidIsobaricHeatCapacity(at.condensingK());
        double vapour = Math.max(0, -left) * heat / latent + Math.max(0, -at.flooded());
        double held = 1 / (1 + build.choke() * vapour);
        if (!build.valve()) {
            double rated = fluid.bubblePressurePa(308.15 + build.approachK());
            return sizes.metering
                    * Math.pow(inlet / rated, build.power())
                    * (1 + build.perKelvin() * Math.max(0, left))
                    * held;
        }
        double te = at.evaporatingK();
        double bulb = fluid.dewPressurePa(te + Math.max(0, superheat));
        double opens = fluid.dewPressurePa(te + build.setting() * build.superheatK());
        double wide = fluid.dewPressurePa(te + (build.setting() + build.span()) * build.superheatK());
        double opening = Math.min(1, Math.max(0.02, (bulb - opens) / (wide - opens)));
        double density = fluid.bubbleLiquidDensity(at.condensingK() - Math.max(0, subcooling));
        return sizes.metering * opening * Math.sqrt(density * (inlet - low)) * held;
    }

    private double held(Point at, double subcooling) {
        double litre = build.capacityW() / 1e6;
        double te = at.evaporatingK();
        double tc = at.condensingK();
        double full = Math.max(0, at.flooded());
        double dry = Math.max(0, at.dried());
        double liquid = fluid.bubbleLiquidDensity(tc - subcooling);
        double vapour = fluid.dewVapourDensity(te);
        double out = Math.max(0, -at.flooded());
        double latent = fluid.dewVapourEnthalpy(te) - fluid.bubbleLiquidEnthalpy(te);
        double in = (fluid.bubbleLiquidEnthalpy(tc - subcooling) - fluid.bubbleLiquidEnthalpy(te)) / latent + out;
        double condenser = (1 - full) * Streams.density(fluid, tc, 1, out, build.slip()) + full * liquid;
        double evaporator =
                (1 - dry) * Streams.density(fluid, te, in, 1 + Math.min(0, at.dried()), build.slip()) + dry * vapour;
        double line = out > 0 ? Streams.density(fluid, tc, out, out, 1) : liquid;
        return litre
                * (build.condenserL() * condenser
                        + build.evaporatorL() * evaporator
                        + build.liquidL() * line
                        + build.vapourL() * vapour / (1 + Math.min(0, at.dried())));
    }

    /** At the ports, with what the lines lose and gain. */
    private Running shown(Point at, Trial trial, Trouble trouble) {
        double suction = fluid.dewPressurePa(at.evaporatingK()) * (1 - build.suctionDrop());
        double liquid = (fluid.bubblePressurePa(at.condensingK()) + trouble.gasPa()) * (1 - build.liquidDrop());
        double line = at.dried() > 0
                ? at.evaporatingK() + trial.superheatK() + build.suctionGainK()
                : fluid.dewTemperatureK(suction);
        double full = at.flooded() > 0
                ? at.condensingK() - trial.subcoolingK() - build.liquidLossK() * Math.min(1, trial.subcoolingK())
                : at.condensingK();
        return new Running(
                suction,
                line,
                liquid,
                full,
                trial.dischargeK(),
                trial.supplyK(),
                line - fluid.dewTemperatureK(suction),
                fluid.bubbleTemperatureK(liquid) - full);
    }

    /**
     * Pressure at rest at the liquid port, all at one temperature.
     *
     * @param kelvins the temperature, K
     * @param trouble what is wrong beside the charge
     * @return absolute pressure, Pa
     */
    public double standingPa(double kelvins, Trouble trouble) {
        double gas = trouble.gasPa() * (build.valve() ? 0.95 : 0.6);
        return 0.7 * fluid.bubblePressurePa(kelvins) + 0.3 * fluid.dewPressurePa(kelvins) + gas;
    }
}

package org.satline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.satline.charge.ChargeCase;
import org.satline.charge.ChargeJudge;
import org.satline.charge.ChargeQuestion;
import org.satline.charge.OperatingConditions;
import org.satline.charge.margin.ChargeLevel;
import org.satline.charge.margin.Criterion;
import org.satline.charge.margin.ImplausibleReadingException;
import org.satline.charge.margin.Margins;
import org.satline.charge.margin.MeteringDevice;
import org.satline.equilibrium.FluidModel;
import org.satline.measurement.DigitalGauge;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.measurement.Thermometer;
import org.satline.measurement.ThermometerClass;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Mass;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Power;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/**
 * The verdict does not hang on what the simulation assumes. Its table of behaviour was made with the figures of the file; here each of them
 * is halved and doubled, or taken to the limit that the file gives, and the machines that follow are judged by that same table, with the
 * instruments of a usual kit and the machine's own target: right charges and charges 15 and 30 % off, and the right charge with one other
 * fault, in two weathers.
 *
 * <p>Held: no charge act leads away from the right charge. Filling is wrong at the right charge and above it, taking out at it and below
 * it: where refrigerant would be moved for nothing or in the wrong direction. An act in the right direction, another reading, or no
 * advice is not wrong.
 * No charge 30 % off is told as right unless exact instruments find it within the published tolerance. And what is asked of the
 * verdict is not nothing: of the charges 30 % off, all altered machines together, it acts on as many as of those of the unaltered ones,
 * less a tenth.
 *
 * <p>Not held: an orifice that is built for 11 K of subcooling lies beyond the systems that the table was drawn from (3 to 9 K), and its
 * fouled condenser can be taken for too much refrigerant. Its charge alone, right or wrong, is held as all others.
 */
class AssumptionsTest {
    private static final double[] SHARES = {0.7, 0.85, 1, 1.15, 1.3};
    private static final double SERIOUS = 0.3;
    private static final List<ImposedFault> FAULTS = List.of(
            ImposedFault.condenserFouling(0.4),
            ImposedFault.lowEvaporatorAirflow(0.4),
            ImposedFault.compressorValveLeakage(0.3));
    private static final String BEYOND_THE_TABLE = "design subcooling";
    private static final List<AirConditions> WEATHERS =
            List.of(AirConditions.rated(), AirConditions.ofCelsius(28, 24, 17));
    private static final Map<MeteringDevice, WorkingFluid> FLUIDS =
            Map.of(MeteringDevice.EXPANSION_VALVE, fluid("R-410A"), MeteringDevice.FIXED_ORIFICE, fluid("R-22"));
    private static final Map<MeteringDevice, SaturationCurve> CURVES = Map.of(
            MeteringDevice.EXPANSION_VALVE, curve(MeteringDevice.EXPANSION_VALVE),
            MeteringDevice.FIXED_ORIFICE, curve(MeteringDevice.FIXED_ORIFICE));
    private static final DigitalGauge GAUGE = new DigitalGauge("gauge", 0.5, PressureDifference.ofPsi(0.5));
    private static final Thermometer THERMOMETER =
            new Thermometer("thermometer", ThermometerClass.named("thermocouple-k-class-1"), 0.1);

    private static final List<Visit> USUAL = new ArrayList<>();
    private static final Map<String, List<Visit>> ALTERED = new ConcurrentHashMap<>();

    @BeforeAll
    static void visitAll() {
        USUAL.addAll(visits(Assumptions.standard(), "usual"));
        names().toList().parallelStream()
                .forEach(name -> ALTERED.put(
                        name,
                        trials(name)
                                .mapToObj(value -> visits(Assumptions.standard().with(name, value), name + " " + value))
                                .flatMap(List::stream)
                                .toList()));
    }

    /** What the verdict was on one visit. */
    private record Visit(
            String what, double share, ImposedFault fault, SteadyState shown, ChargeLevel exact, String answer) {
        boolean wrongAct() {
            return answer.equals("low") ? share >= 1 : answer.equals("high") && share <= 1;
        }

        boolean charge() {
            return fault.equals(ImposedFault.none());
        }

        boolean serious() {
            return Math.abs(share - 1) > SERIOUS - 1e-9 && exact != ChargeLevel.ON_TARGET;
        }

        boolean actedOn() {
            return answer.equals(share < 1 ? "low" : "high");
        }
    }

    static Stream<String> names() {
        return Assumptions.all().keySet().stream();
    }

    private static <K, V> V of(Map<K, V> map, K key) {
        return Objects.requireNonNull(map.get(key), key.toString());
    }

    private static DoubleStream trials(String name) {
        Assumptions.Assumed assumed = of(Assumptions.all(), name);
        return DoubleStream.of(
                Math.max(assumed.value() / 2, assumed.least().orElse(Double.NEGATIVE_INFINITY)),
                Math.min(assumed.value() * 2, assumed.most().orElse(Double.POSITIVE_INFINITY)));
    }

    @ParameterizedTest
    @MethodSource("names")
    void noChargeActBecomesAWrongOne(String name) {
        List<Visit> visits = ALTERED.get(name);
        assertThat(visits).hasSizeGreaterThan(USUAL.size());
        assertThat(visits)
                .noneMatch(v -> v.wrongAct() && (v.charge() || !name.equals(BEYOND_THE_TABLE)))
                .noneMatch(v -> v.serious() && v.answer.equals("on-target"));
    }

    @Test
    void seriousErrorsAreActedOnAsWithTheFiguresOfTheFile() {
        List<Visit> altered = ALTERED.values().stream().flatMap(List::stream).toList();
        assertThat(actedOn(USUAL)).isGreaterThan(0.5);
        assertThat(actedOn(altered)).isGreaterThan(actedOn(USUAL) - 0.1);
    }

    /** Each figure is in use: with another one the machines show something else. */
    @ParameterizedTest
    @MethodSource("names")
    void whatIsAssumedShows(String name) {
        Set<SteadyState> usual = USUAL.stream().map(Visit::shown).collect(Collectors.toSet());
        assertThat(ALTERED.get(name)).anyMatch(v -> !usual.contains(v.shown));
    }

    private static double actedOn(List<Visit> visits) {
        return visits.stream()
                .filter(Visit::serious)
                .mapToInt(v -> v.actedOn() ? 1 : 0)
                .average()
                .orElseThrow();
    }

    private static List<Visit> visits(Assumptions assumed, String what) {
        List<Visit> visits = new ArrayList<>();
        for (MeteringDevice metering : MeteringDevice.values()) {
            SimulatedSystem system = system(metering, assumed);
            for (AirConditions air : WEATHERS) {
                for (double share : SHARES) {
                    visit(system, air, share, ImposedFault.none(), what).ifPresent(visits::add);
                }
                for (ImposedFault fault : FAULTS) {
                    visit(system, air, 1, fault, what).ifPresent(visits::add);
                }
            }
        }
        return visits;
    }

    private static Optional<Visit> visit(
            SimulatedSystem system, AirConditions air, double share, ImposedFault fault, String what) {
        MeteringDevice metering = system.design().metering();
        try {
            double target = judged(settled(system, 1, air, ImposedFault.none()), metering);
            if (!(target >= 1 && target <= 25)) {
                return Optional.empty(); // no maker prints such a target
            }
            SteadyState state = settled(system, share, air, fault);
            ChargeQuestion question = ChargeQuestion.of(metering, Optional.of(TemperatureDifference.ofKelvins(target)));
            double off = judged(state, metering) - target;
            double band = ChargeQuestion.publishedTolerance(metering.judgedBy()).kelvins();
            boolean more = off > 0 == (metering.judgedBy() == Criterion.SUBCOOLING);
            ChargeLevel exact =
                    Math.abs(off) <= band ? ChargeLevel.ON_TARGET : more ? ChargeLevel.HIGH : ChargeLevel.LOW;
            String answer = answer(of(CURVES, metering), read(state, air), question);
            return Optional.of(
                    new Visit(what + ": " + metering + ", " + air.outdoor(), share, fault, state, exact, answer));
        } catch (NoSteadyStateException e) {
            return Optional.empty(); // its safety switches stop it: nobody judges a charge on that
        }
    }

    private static String answer(SaturationCurve curve, SystemReadings readings, ChargeQuestion question) {
        OperatingConditions conditions = new OperatingConditions(
                Optional.of(Duration.ofMinutes(25)),
                Optional.empty(),
                Optional.of(true),
                Optional.of(true),
                Optional.empty(),
                Optional.empty());
        try {
            return ChargeJudge.usual()
                    .judge(new ChargeCase(curve, readings, question, conditions))
                    .label();
        } catch (ImplausibleReadingException | OutOfValidityException e) {
            return "refused";
        }
    }

    private static double judged(SteadyState state, MeteringDevice metering) {
        return Margins.of(of(CURVES, metering), state.exactReadings(AirConditions.rated()))
                .get(metering.judgedBy())
                .orElseThrow()
                .value()
                .kelvins();
    }

    private static SystemReadings read(SteadyState state, AirConditions air) {
        return SystemReadings.builder()
                .put(Place.SUCTION_PRESSURE, pressure(state.suctionPressure()))
                .put(Place.SUCTION_LINE, THERMOMETER.readOnPipe(state.suctionLine(), "suction line", 0.5))
                .put(Place.LIQUID_PRESSURE, pressure(state.liquidPressure()))
                .put(Place.LIQUID_LINE, THERMOMETER.readOnPipe(state.liquidLine(), "liquid line", 0.5))
                .put(Place.DISCHARGE_LINE, THERMOMETER.readOnPipe(state.dischargeLine(), "discharge line", 0.5))
                .put(Place.RETURN_DRY_BULB, THERMOMETER.read(air.returnDryBulb(), "return air"))
                .put(Place.RETURN_WET_BULB, THERMOMETER.read(air.returnWetBulb(), "return air, wet bulb"))
                .put(Place.SUPPLY_DRY_BULB, THERMOMETER.read(state.supplyDryBulb(), "supply air"))
                .put(Place.OUTDOOR_AIR, THERMOMETER.read(air.outdoor(), "outdoor air"))
                .build();
    }

    private static Reading<Pressure> pressure(Pressure exact) {
        return GAUGE.read(
                GaugePressure.ofPascals(
                        exact.pascals() - Atmosphere.standard().pressure().pascals()),
                Atmosphere.standard());
    }

    private static WorkingFluid fluid(String name) {
        return WorkingFluid.of(Catalogue.standard().find(name));
    }

    private static SaturationCurve curve(MeteringDevice metering) {
        return SaturationCurves.of(of(FLUIDS, metering).refrigerant());
    }

    private static SimulatedSystem system(MeteringDevice metering, Assumptions assumed) {
        WorkingFluid fluid = of(FLUIDS, metering);
        return SimulatedSystem.of(
                SystemDesign.typical(fluid.refrigerant(), metering, Power.ofTonsOfRefrigeration(3), assumed),
                fluid,
                assumed);
    }

    private static SteadyState settled(SimulatedSystem system, double share, AirConditions air, ImposedFault fault) {
        return system.steadyState(Mass.ofKilograms(share * system.ratedCharge().kilograms()), air, fault);
    }

    /**
     * Constants of moist air against the equation of water, Wagner and Pruss 2002 (IAPWS-95), which holds the vapour pressure to 0.02 %:
     * the formula over water within 0.6 % from 0 to 40 degC (the limit of the formula, from memory), the heat of vaporisation at 0 degC
     * within 0.1 %, the heat capacity of water between 0 and 40 degC within 1 %.
     */
    @Test
    void moistAirAgreesWithTheEquationOfWater() {
        FluidModel water = FluidModel.of(Catalogue.standard().find("R-718"));
        MoistAir moist = Assumptions.standard().air;
        for (double celsius = 1; celsius <= 40; celsius += 3) {
            double kelvins = Temperature.ofCelsius(celsius).kelvins();
            double pa = moist.vapourPressure() * Math.exp(moist.slope() * celsius / (moist.pole() + celsius));
            double exact = water.bubbleAtTemperature(kelvins).pressurePa();
            assertThat(pa / exact).isCloseTo(1, within(0.006));
            double heat = water.bubbleAtTemperature(kelvins).saturated().isobaricHeatCapacity();
            assertThat(moist.waterHeatCapacity() / heat).isCloseTo(1, within(0.01));
        }
        double coldest = water.minTemperatureK();
        double latent = water.dewAtTemperature(coldest).saturated().specificEnthalpy()
                - water.bubbleAtTemperature(coldest).saturated().specificEnthalpy();
        assertThat(moist.latentHeat() / latent).isCloseTo(1, within(0.001));
        double ratio = water.equation().molarMass() / 0.0289647; // dry air, CIPM-2007 0.02896546 kg/mol; from memory
        assertThat(moist.molarMassRatio()).isCloseTo(ratio, within(1e-4));
    }
}

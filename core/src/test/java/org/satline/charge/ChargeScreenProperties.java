package org.satline.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.lifecycle.AfterContainer;
import org.satline.charge.margin.ChargeLevel;
import org.satline.charge.margin.Deviation;
import org.satline.charge.margin.ImplausibleReadingException;
import org.satline.charge.margin.LineMargin;
import org.satline.charge.margin.MeteringDevice;
import org.satline.measurement.Place;
import org.satline.quantity.OutOfValidityException;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** The screen computes what the judge computes, refuses what it refuses, and gives no level but that of the judge. */
class ChargeScreenProperties {
    private static final Refrigerant R32 = Catalogue.standard().find("R-32");
    private static final Refrigerant R407C = Catalogue.standard().find("R-407C");
    private static final Map<Refrigerant, SaturationCurve> CURVES =
            Map.of(R32, SaturationCurves.solving(R32), R407C, SaturationCurves.solving(R407C));
    /** Round-off of numbers of some 300 K, and of a probability from them: far below any instrument. */
    private static final double ROUND_OFF = 1e-9;

    private static final Map<String, Integer> MET = new ConcurrentHashMap<>();

    private static SaturationCurve curve(Refrigerant refrigerant) {
        return Objects.requireNonNull(CURVES.get(refrigerant));
    }

    @Property(tries = 2000, seed = "20261130")
    void itsLevelIsThatOfTheJudge(@ForAll("rows") ChargeRow row, @ForAll("risks") double risk) {
        SaturationCurve curve = curve(row.refrigerant());
        ScreenedCharge screened = ChargeScreen.of(curve).accepting(risk, risk).screen(row);
        Judgement judged;
        try {
            judged = ChargeJudge.usual().accepting(risk, risk).judge(row.chargeCase(curve));
        } catch (ImplausibleReadingException impossible) {
            isWithout(screened, ScreenReason.IMPLAUSIBLE);
            return;
        } catch (OutOfValidityException outside) {
            isWithout(screened, ScreenReason.OUT_OF_RANGE);
            return;
        }
        sameMargin(screened.superheatK(), judged.evidence().margins().superheat());
        sameMargin(screened.subcoolingK(), judged.evidence().margins().subcooling());
        if (screened instanceof ScreenedCharge.Level found) {
            MET.merge("level", 1, Integer::sum);
            same(found, judged.evidence().deviation().orElseThrow());
        } else {
            MET.merge(((ScreenedCharge.NoLevel) screened).reason().name(), 1, Integer::sum);
        }
        if (judged instanceof Judgement.Decided decided) {
            MET.merge("decided", 1, Integer::sum);
            decidedToo(screened, decided);
        }
    }

    /**
     * No belief moves the judge against what the one margin tells by the accepted risks, nor out of a band that it is inside as read: so a
     * level that the screen gives is that of the judge, without any tolerance, unless the judge gives none.
     */
    private static void decidedToo(ScreenedCharge screened, Judgement.Decided decided) {
        if (screened instanceof ScreenedCharge.Level found) {
            MET.merge(found.level().isPresent() ? "same level" : "decided by the judge alone", 1, Integer::sum);
            found.level().ifPresent(level -> assertThat(level).isEqualTo(decided.level()));
        } else {
            assertThat(((ScreenedCharge.NoLevel) screened).reason())
                    .isIn(ScreenReason.CONDITION_NOT_MET, ScreenReason.CONTRADICTED);
        }
    }

    /** What was drawn holds every outcome, or the property would say less than it seems to. */
    @AfterContainer
    static void everyOutcomeWasMet() {
        assertThat(new TreeMap<>(MET).keySet())
                .contains(
                        "level",
                        "decided",
                        "same level",
                        "decided by the judge alone",
                        "NOT_READ",
                        "NO_TARGET",
                        "CONDITION_NOT_MET",
                        "MODE_NOT_KNOWN",
                        "CONTRADICTED",
                        "IMPLAUSIBLE",
                        "OUT_OF_RANGE");
    }

    private static void isWithout(ScreenedCharge screened, ScreenReason reason) {
        MET.merge(reason.name(), 1, Integer::sum);
        assertThat(screened)
                .isInstanceOfSatisfying(
                        ScreenedCharge.NoLevel.class,
                        found -> assertThat(found.reason()).isEqualTo(reason));
    }

    private static void sameMargin(OptionalDouble screened, Optional<LineMargin> judged) {
        assertThat(screened.isPresent()).isEqualTo(judged.isPresent());
        judged.ifPresent(margin ->
                assertThat(screened.getAsDouble()).isCloseTo(margin.value().kelvins(), within(ROUND_OFF)));
    }

    private static void same(ScreenedCharge.Level found, Deviation judged) {
        assertThat(found.targetK()).isCloseTo(judged.target().kelvins(), within(ROUND_OFF));
        assertThat(found.deviationK()).isCloseTo(judged.value().kelvins(), within(ROUND_OFF));
        assertThat(found.standardUncertaintyK()).isCloseTo(judged.standardUncertaintyK(), within(ROUND_OFF));
        for (ChargeLevel level : ChargeLevel.values()) {
            assertThat(found.probability(level)).isCloseTo(judged.probability(level), within(ROUND_OFF));
        }
    }

    /** Mostly the usual ones. */
    @Provide
    Arbitrary<Double> risks() {
        return Arbitraries.of(0.05, 0.05, 0.01, 0.2, 0.45);
    }

    @Provide
    Arbitrary<ChargeRow> rows() {
        return Arbitraries.randomValue(random -> {
            Refrigerant refrigerant = random.nextBoolean() ? R32 : R407C;
            SaturationCurve curve = curve(refrigerant);
            MeteringDevice metering =
                    random.nextBoolean() ? MeteringDevice.EXPANSION_VALVE : MeteringDevice.FIXED_ORIFICE;
            double suctionPa = curve.dewPressurePa(280 + 3 * random.nextGaussian());
            double liquidPa = curve.bubblePressurePa(315 + 4 * random.nextGaussian());
            double dewK = curve.dewTemperatureK(suctionPa);
            double bubbleK = curve.bubbleTemperatureK(liquidPa);
            ChargeRow.Builder row = ChargeRow.of(refrigerant, metering)
                    .suction(
                            random.nextInt(40) == 0 ? 9e6 : suctionPa,
                            dewK + 7 + (random.nextInt(8) == 0 ? 15 : 4) * random.nextGaussian())
                    .liquid(liquidPa, bubbleK - 6 - (random.nextInt(8) == 0 ? 12 : 3) * random.nextGaussian())
                    .read(Place.RETURN_DRY_BULB, 298 + 2 * random.nextGaussian())
                    .read(Place.RETURN_WET_BULB, 291 + 2 * random.nextGaussian())
                    .read(Place.OUTDOOR_AIR, 302 + (random.nextInt(10) == 0 ? 12 : 3) * random.nextGaussian())
                    .read(Place.DISCHARGE_LINE, 335 + 15 * random.nextGaussian());
            if (random.nextInt(3) > 0) {
                row.target(metering == MeteringDevice.EXPANSION_VALVE ? 6 : 7);
            }
            if (random.nextInt(3) > 0) {
                row.uncertainty(3000 * random.nextDouble(), 0.5 * random.nextDouble());
            }
            if (random.nextInt(4) == 0) {
                row.outdoorMinimumMet(random.nextInt(5) > 0);
            }
            if (random.nextInt(3) == 0) {
                row.read(Place.SUCTION_DROP, 2e4 * random.nextDouble())
                        .read(Place.LIQUID_DROP, 3e4 * random.nextDouble());
            }
            for (Place place : Place.values()) {
                if (random.nextInt(12) == 0) {
                    row.read(place, Double.NaN);
                }
            }
            return row.build();
        });
    }
}

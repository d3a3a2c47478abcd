package org.satline.examples;

import java.util.Locale;
import java.util.Optional;
import org.satline.charge.ChargeCase;
import org.satline.charge.ChargeJudge;
import org.satline.charge.ChargeQuestion;
import org.satline.charge.Judgement;
import org.satline.charge.OperatingConditions;
import org.satline.charge.margin.ChargeLevel;
import org.satline.charge.margin.MeteringDevice;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.quantity.UnitSystem;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/** Is the charge low, right or high, and how sure is that? */
public final class VerdictWithUncertainty {
    private VerdictWithUncertainty() {}

    /**
     * Prints the subcooling of R-744 against its target, with the probability of each level. The pressure is taken as exact, so that the
     * doubt is that of the probe alone.
     *
     * @param args none
     */
    public static void main(String[] args) {
        SaturationCurve curve = SaturationCurves.of(Catalogue.standard().find("R-744"));
        SystemReadings readings = SystemReadings.builder()
                .put(Place.LIQUID_PRESSURE, Reading.exact(Pressure.ofKilopascals(1969.6)))
                .put(Place.LIQUID_LINE, Reading.of(Temperature.ofCelsius(-23), 0.5, "probe on the liquid line"))
                .build();
        ChargeQuestion question =
                ChargeQuestion.of(MeteringDevice.EXPANSION_VALVE, Optional.of(TemperatureDifference.ofKelvins(5)));
        Judgement judgement = ChargeJudge.usual()
                .judge(new ChargeCase(
                        curve, readings, question, OperatingConditions.unknown().withOutdoorMinimumMet(true)));
        judgement.evidence().deviation().ifPresent(deviation -> {
            System.out.printf(
                    Locale.ROOT,
                    "%s as read: %.2f K, target %.2f K, u = %.2f K%n",
                    deviation.level(),
                    deviation.measured().kelvins(),
                    deviation.target().kelvins(),
                    deviation.standardUncertaintyK());
            for (ChargeLevel level : ChargeLevel.values()) {
                System.out.printf(Locale.ROOT, "  %s with probability %.3f%n", level, deviation.probability(level));
            }
        });
        Wording words = Wording.of(Language.ENGLISH, UnitSystem.SI);
        System.out.println(judgement.label()); // what may be acted on: a level, undecided, or another fault first
        judgement.evidence().findings().forEach(finding -> System.out.println("  " + words.of(finding)));
    }
}

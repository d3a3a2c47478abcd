package org.satline.charge;

import java.util.Optional;
import org.satline.charge.margin.ChargeLevel;
import org.satline.charge.margin.Deviation;
import org.satline.charge.margin.LineMargin;
import org.satline.charge.margin.Margins;
import org.satline.charge.margin.MeteringDevice;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Subject;
import org.satline.measurement.Place;
import org.satline.quantity.TemperatureDifference;

/**
 * Readings that no charge error explains. Signs of superheat and subcooling by Rossi and Braun (1997) for the fixed orifice; the superheat
 * range in which an expansion valve controls by the California Energy Code, RA3.2 (2008).
 *
 * @param finding what contradicts
 * @param excessK how far beyond its limit the contradicting reading lies, K
 */
record Contradiction(Finding finding, double excessK) {
    /**
     * Above this much subcooling a liquid line is plainly not short of refrigerant: upper end of the usual 8 to 15 degF (common practice,
     * no source).
     */
    static final TemperatureDifference AMPLE = TemperatureDifference.ofFahrenheitDegrees(15);
    /** Below this much subcooling a system is plainly not overfull (common practice, no source). */
    static final TemperatureDifference SCANT = TemperatureDifference.ofFahrenheitDegrees(2);

    static Optional<Contradiction> between(Margins margins, MeteringDevice metering, Deviation deviation) {
        return metering == MeteringDevice.EXPANSION_VALVE
                ? margins.superheat().flatMap(s -> flooding(s).or(() -> withValve(s.value(), deviation.level())))
                : margins.subcooling().flatMap(s -> withOrifice(s.value(), deviation.level()));
    }

    /** An expansion valve whose superheat, as read, lies below the least at which it controls. */
    static Optional<Contradiction> flooding(LineMargin superheat) {
        double least = PublishedLimits.leastValveSuperheatK();
        double read = superheat.value().kelvins();
        return read < least
                ? of(
                        ChargeCode.VALVE_FLOODS,
                        superheat.value(),
                        least - read,
                        least,
                        PublishedLimits.mostValveSuperheatK())
                : Optional.empty();
    }

    private static Optional<Contradiction> withValve(TemperatureDifference superheat, ChargeLevel level) {
        double least = PublishedLimits.leastValveSuperheatK();
        double most = PublishedLimits.mostValveSuperheatK();
        return superheat.kelvins() > most && level != ChargeLevel.LOW
                ? of(ChargeCode.EVAPORATOR_STARVES, superheat, superheat.kelvins() - most, least, most)
                : Optional.empty();
    }

    private static Optional<Contradiction> withOrifice(TemperatureDifference subcooling, ChargeLevel level) {
        double ample = AMPLE.kelvins();
        double scant = SCANT.kelvins();
        if (level == ChargeLevel.LOW && subcooling.kelvins() > ample) {
            return of(ChargeCode.AMPLE_SUBCOOLING, subcooling, subcooling.kelvins() - ample, scant, ample);
        }
        return level == ChargeLevel.HIGH && subcooling.kelvins() < scant
                ? of(ChargeCode.SCANT_SUBCOOLING, subcooling, scant - subcooling.kelvins(), scant, ample)
                : Optional.empty();
    }

    private static Optional<Contradiction> of(
            ChargeCode code, TemperatureDifference read, double excessK, double leastK, double mostK) {
        boolean ofValve = code == ChargeCode.VALVE_FLOODS || code == ChargeCode.EVAPORATOR_STARVES;
        return Optional.of(new Contradiction(
                Finding.of(
                                Severity.FORBIDS,
                                code,
                                Subject.reading((ofValve ? Place.SUCTION_LINE : Place.LIQUID_LINE).path()),
                                Figure.of("read", read),
                                Figure.of("least", TemperatureDifference.ofKelvins(leastK)),
                                Figure.of("most", TemperatureDifference.ofKelvins(mostK)))
                        .citing(ofValve ? PublishedLimits.SOURCE : Finding.PRACTICE),
                excessK));
    }
}

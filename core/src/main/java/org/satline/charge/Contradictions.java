package org.satline.charge;

import java.util.Locale;
import java.util.Optional;
import org.satline.quantity.TemperatureDifference;

/**
 * Readings that no charge error explains. Signs of superheat and subcooling by Rossi and Braun (1997) for the fixed orifice; the superheat range in
 * which an expansion valve controls by the California Energy Code, RA3.2 (2008).
 */
final class Contradictions {
    /** Above this much subcooling a liquid line is plainly not short of refrigerant, K: upper end of the usual 8 to 15 degF (common practice, no source). */
    private static final double AMPLE_SUBCOOLING_K =
            TemperatureDifference.ofFahrenheitDegrees(15).kelvins();
    /** Below this much subcooling a system is plainly not overfull, K (common practice, no source). */
    private static final double SCANT_SUBCOOLING_K =
            TemperatureDifference.ofFahrenheitDegrees(2).kelvins();

    private Contradictions() {}

    /** What contradicts, what to look for instead, and how far beyond its limit the contradicting reading lies, K. */
    record Contradiction(String reason, String advice, double excessK) {}

    static Optional<Contradiction> between(Margins margins, MeteringDevice metering, Deviation deviation) {
        return metering == MeteringDevice.EXPANSION_VALVE
                ? margins.superheat().flatMap(s -> withValve(s.value().kelvins(), deviation))
                : margins.subcooling().flatMap(s -> withOrifice(s.value().kelvins(), deviation));
    }

    private static Optional<Contradiction> withValve(double superheatK, Deviation deviation) {
        ChargeLevel level = deviation.level();
        if (superheatK < PublishedLimits.leastValveSuperheatK()) {
            return Optional.of(new Contradiction(
                    range(superheatK) + ": the valve floods, whatever the subcooling says",
                    "check evaporator airflow, the valve and the fixing of its bulb before the charge; liquid may reach the compressor",
                    PublishedLimits.leastValveSuperheatK() - superheatK));
        }
        if (superheatK > PublishedLimits.mostValveSuperheatK() && level != ChargeLevel.LOW) {
            return Optional.of(new Contradiction(
                    range(superheatK)
                            + " while the liquid line is well filled: the evaporator starves for another reason than charge",
                    "look for a restriction in the liquid line, its drier or the valve; do not add refrigerant",
                    superheatK - PublishedLimits.mostValveSuperheatK()));
        }
        return Optional.empty();
    }

    private static Optional<Contradiction> withOrifice(double subcoolingK, Deviation deviation) {
        ChargeLevel level = deviation.level();
        if (level == ChargeLevel.LOW && subcoolingK > AMPLE_SUBCOOLING_K) {
            return Optional.of(new Contradiction(
                    String.format(
                            Locale.ROOT,
                            "superheat is high, yet subcooling is %.1f K (%.1f degF): a system short of refrigerant has little",
                            subcoolingK,
                            TemperatureDifference.ofKelvins(subcoolingK).fahrenheitDegrees()),
                    "look for a restriction in the liquid line or the orifice; do not add refrigerant",
                    subcoolingK - AMPLE_SUBCOOLING_K));
        }
        if (level == ChargeLevel.HIGH && subcoolingK < SCANT_SUBCOOLING_K) {
            return Optional.of(new Contradiction(
                    String.format(
                            Locale.ROOT,
                            "superheat is low, yet subcooling is only %.1f K (%.1f degF): an overfull system has plenty",
                            subcoolingK,
                            TemperatureDifference.ofKelvins(subcoolingK).fahrenheitDegrees()),
                    "check evaporator airflow, the orifice and the compressor valves before taking refrigerant out",
                    SCANT_SUBCOOLING_K - subcoolingK));
        }
        return Optional.empty();
    }

    private static String range(double superheatK) {
        return String.format(
                Locale.ROOT,
                "superheat %.1f K (%.1f degF) is outside [%.1f, %.1f] K, in which an expansion valve controls",
                superheatK,
                TemperatureDifference.ofKelvins(superheatK).fahrenheitDegrees(),
                PublishedLimits.leastValveSuperheatK(),
                PublishedLimits.mostValveSuperheatK());
    }
}

package org.satline.charge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.satline.charge.margin.MeteringDevice;
import org.satline.resource.CsvResource;
import org.satline.resource.OnDemand;

/**
 * Ranks faults by how well their published signatures explain a set of residuals. Stateless, thread-safe.
 *
 * <p>Signatures: Rossi and Braun 1997, HVAC&amp;R Research 3(1):19-37, for the fixed orifice; directions from memory for overcharge,
 * foreign gas and the expansion valve. Bayes' rule over single faults, residuals taken as independent but for superheat and subcooling,
 * which are weighed together by the charge that they point to (Li and Braun, virtual refrigerant charge sensor), and the pressure at rest,
 * which speaks for or against foreign gas. Errors of the charge count four times as frequent beforehand as each other fault (our choice:
 * they are what a service call most often finds).
 */
final class FaultRanking {
    private static final double CHARGE_WEIGHT = 4;
    private static final OnDemand<List<CsvResource.Row>> SIGNATURES = new OnDemand<>() {
        @Override
        protected List<CsvResource.Row> read() {
            return CsvResource.read(
                            FaultRanking.class,
                            "fault-signatures.csv",
                            "metering",
                            "fault",
                            "evaporating",
                            "superheat",
                            "condensing",
                            "subcooling",
                            "discharge",
                            "condenser_air_rise",
                            "evaporator_air_drop",
                            "source")
                    .rows();
        }
    };

    private FaultRanking() {}

    /**
     * Ranks all faults.
     *
     * @param metering metering device
     * @param residuals measured less fault-free values, at most one for each symptom
     * @return all faults, most probable first
     */
    public static List<FaultLikelihood> of(MeteringDevice metering, List<Residual> residuals) {
        return of(metering, residuals, Optional.empty());
    }

    static List<FaultLikelihood> of(MeteringDevice metering, List<Residual> residuals, Optional<RestEvidence> rest) {
        Map<Fault, Double> weights = new EnumMap<>(Fault.class);
        for (Fault fault : Fault.values()) {
            double weight = (fault.ofCharge() ? CHARGE_WEIGHT : 1) * explained(metering, fault, residuals);
            weights.put(
                    fault,
                    fault == Fault.NON_CONDENSABLE_GAS
                            ? weight * rest.map(RestEvidence::ratio).orElse(1.0)
                            : weight);
        }
        double total =
                weights.values().stream().mapToDouble(Double::doubleValue).sum();
        List<FaultLikelihood> ranking = new ArrayList<>();
        weights.forEach((fault, weight) -> ranking.add(likelihood(metering, fault, weight / total, residuals)));
        ranking.sort(Comparator.comparingDouble(FaultLikelihood::probability).reversed());
        return List.copyOf(ranking);
    }

    private static double explained(MeteringDevice metering, Fault fault, List<Residual> residuals) {
        Optional<MarginPair> pair = MarginPair.covers(fault) ? MarginPair.of(residuals) : Optional.empty();
        double likelihood = 1;
        for (Residual residual : residuals) {
            String signs = signs(metering, fault, residual.symptom());
            double one = residual.symptom() == Symptom.SUBCOOLING && pair.isPresent()
                    ? pair.get().likelihood(fault, signs)
                    : residual.likelihood(signs);
            // the floor keeps a residual far outside every signature from making all faults impossible at once
            likelihood *= Math.max(1e-12, one);
        }
        return likelihood;
    }

    private static FaultLikelihood likelihood(
            MeteringDevice metering, Fault fault, double probability, List<Residual> residuals) {
        List<Residual> speaksFor = new ArrayList<>();
        List<Residual> against = new ArrayList<>();
        for (Residual residual : residuals) {
            double ratio = residual.likelihood(signs(metering, fault, residual.symptom())) / residual.likelihood("0");
            if (!(ratio <= 1.5)) {
                speaksFor.add(residual);
            } else if (ratio < 1 / 1.5) {
                against.add(residual);
            }
        }
        return new FaultLikelihood(fault, probability, speaksFor, against);
    }

    private static String signs(MeteringDevice metering, Fault fault, Symptom symptom) {
        for (CsvResource.Row row : SIGNATURES.get()) {
            if (row.text("metering").equals(metering.label())
                    && row.text("fault").equals(fault.label())) {
                return row.text(symptom.column());
            }
        }
        throw new IllegalStateException("no signature of " + fault.label() + " with " + metering.label());
    }
}

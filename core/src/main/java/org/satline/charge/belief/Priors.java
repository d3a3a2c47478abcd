package org.satline.charge.belief;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.satline.charge.margin.MeteringDevice;
import org.satline.resource.CsvResource;
import org.satline.resource.OnDemand;

/** What is believed before anything was read, from {@code priors.csv}: each figure stands there with its basis. */
final class Priors {
    private static final double DENSITY = 1 / Math.sqrt(2 * Math.PI);
    private static final OnDemand<Map<String, Double>> TABLE = new OnDemand<>() {
        @Override
        protected Map<String, Double> read() {
            Map<String, Double> values = new HashMap<>();
            for (CsvResource.Row row : CsvResource.read(Priors.class, "priors.csv", "item", "value", "basis", "source")
                    .rows()) {
                values.put(row.text("item"), row.number("value"));
            }
            return values;
        }
    };

    private Priors() {}

    static double value(String item) {
        Double value = TABLE.get().get(item);
        if (value == null) {
            throw new IllegalStateException("priors.csv has no row \"" + item + "\"");
        }
        return value;
    }

    /** Weight of a hypothesis beforehand; needs no common factor. */
    static double of(Optional<Fault> fault, double chargeError) {
        double other = value("another refrigerant");
        if (fault.isEmpty()) {
            return (1 - other) * (1 - value("other fault")) * ofError(chargeError);
        }
        if (fault.get() == Fault.ANOTHER_REFRIGERANT) {
            return other;
        }
        return (1 - other)
                * value("other fault")
                * value("share of " + fault.get().label())
                * ofError(chargeError);
    }

    /**
     * Of one step of the grid of charge errors: the field's shares of too little, right and too much; off by anything
     * up to the farthest alike.
     */
    private static double ofError(double error) {
        double step = value("step of charge error");
        double spread = value("spread of right");
        double right = DENSITY / spread * Math.exp(-error * error / (2 * spread * spread)) * step;
        double off = Math.min(1, Math.abs(error) / step) * step / value("farthest charge error");
        return value("right") * right + (error < 0 ? value("under") : value("over")) * (error == 0 ? 0 : off);
    }

    /** Kelvins that the judged quantity of a typical system answers to its whole charge with. */
    static double responseK(MeteringDevice metering) {
        return value("response of " + metering.label());
    }

    /** A share that is trusted so far, and what the field says of its level for the rest. */
    static double mixed(double trust, double share, String level) {
        return trust * share + (1 - trust) * value(level);
    }

    /**
     * Share of systems in which a charge error shows as more than the tolerance; the response differs by some half
     * either way.
     */
    static double beyond(double error, double band) {
        return Math.min(1, Math.max(0, (error - band) / value("softness of level") + 0.5));
    }
}

package org.satline.equilibrium;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.satline.equation.FixedComposition;
import org.satline.resource.CsvResource;
import org.satline.resource.CsvResource.Row;
import org.satline.resource.OnDemand;

/**
 * Published melting lines of pure substances: at a pressure above the line the substance is solid. Where none is on
 * record solid states are not told apart from liquid ones. Immutable and thread-safe.
 */
final class MeltingLine {
    private static final OnDemand<Map<String, MeltingLine>> BY_SUBSTANCE = new OnDemand<>() {
        @Override
        protected Map<String, MeltingLine> read() {
            return lines();
        }
    };
    /** A state on the line itself is liquid. */
    private static final double ROUND_OFF = 1e-9;

    /** {@code p/p* = base + sum a_i f_i}, with {@code f = theta^t - 1} or {@code (theta - 1)^t}, or the logarithm of the left-hand side. */
    private record Piece(
            double fromK, double toK, double unitK, double unitPa, String form, String source, List<double[]> terms) {
        double pressure(double temperature) {
            double theta = temperature / unitK;
            double sum = form.equals("logarithm") ? 0 : 1;
            for (double[] term : terms) {
                sum += term[0]
                        * switch (form) {
                            case "excess" -> Math.pow(theta - 1, term[1]);
                            case "logarithm" -> 1 - Math.pow(theta, term[1]);
                            default -> Math.pow(theta, term[1]) - 1;
                        };
            }
            return unitPa * (form.equals("logarithm") ? Math.exp(sum) : sum);
        }
    }

    private final List<Piece> pieces;

    private MeltingLine(List<Piece> pieces) {
        this.pieces = pieces;
    }

    static Optional<MeltingLine> of(FixedComposition composition) {
        return composition.mixture().size() == 1
                ? Optional.ofNullable(BY_SUBSTANCE
                        .get()
                        .get(composition
                                .mixture()
                                .components()
                                .get(0)
                                .constants()
                                .designation()))
                : Optional.empty();
    }

    /**
     * Pressure at which the substance freezes, Pa; empty outside the range of the line, where it does not freeze or nothing is published.
     */
    Optional<Double> pressure(double temperature) {
        return pieces.stream()
                .filter(p -> temperature >= p.fromK && temperature < p.toK)
                .map(p -> p.pressure(temperature))
                .findFirst();
    }

    String source() {
        return pieces.get(0).source;
    }

    void check(String designation, double temperature, double pressure) {
        for (Piece piece : pieces) {
            if (temperature >= piece.fromK && temperature < piece.toK) {
                double melting = piece.pressure(temperature);
                if (pressure > melting * (1 + ROUND_OFF)) {
                    throw new SolidStateException(designation, temperature, pressure, melting, piece.source);
                }
            }
        }
    }

    private static Map<String, MeltingLine> lines() {
        Map<String, List<Piece>> found = new HashMap<>();
        for (Row row : CsvResource.read(
                        MeltingLine.class,
                        "melting-lines.csv",
                        "designation",
                        "from_K",
                        "to_K",
                        "unit_K",
                        "unit_Pa",
                        "form",
                        "coefficient",
                        "exponent",
                        "source")
                .rows()) {
            List<Piece> pieces = found.computeIfAbsent(row.text("designation"), k -> new ArrayList<>());
            double from = row.number("from_K");
            if (pieces.isEmpty() || pieces.get(pieces.size() - 1).fromK != from) {
                pieces.add(new Piece(
                        from,
                        row.number("to_K"),
                        row.number("unit_K"),
                        row.number("unit_Pa"),
                        row.text("form"),
                        row.text("source"),
                        new ArrayList<>()));
            }
            pieces.get(pieces.size() - 1).terms.add(new double[] {row.number("coefficient"), row.number("exponent")});
        }
        Map<String, MeltingLine> lines = new HashMap<>();
        found.forEach((name, pieces) -> lines.put(name, new MeltingLine(List.copyOf(pieces))));
        return Map.copyOf(lines);
    }
}

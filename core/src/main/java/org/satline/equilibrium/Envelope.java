package org.satline.equilibrium;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.satline.equation.FixedComposition;
import org.satline.equilibrium.BoundaryTrace.Node;
import org.satline.equilibrium.IncipientPhase.Specified;

/**
 * The whole phase boundary of one composition: bubble line, dew line, and what lies between their ends and the critical
 * point, where a line may turn back (retrograde region). Immutable and thread-safe.
 */
final class Envelope {
    /** ln of the density ratio; some equations are singular closer to their critical point. */
    private static final double BESIDE_CRITICAL_POINT = 0.3;

    final FixedComposition composition;
    final PhaseBoundary bubble;
    final PhaseBoundary dew;
    private final double[] feed;
    private final Optional<CriticalPoint> critical;
    private final List<Piece> beyond;
    private final BoundaryEnd warmest;
    private final BoundaryEnd highest;

    /** Two neighbouring points of one line beyond its end. */
    private record Piece(PhaseBoundary line, BoundaryPiece piece) {}

    private Envelope(
            FixedComposition composition, PhaseBoundary bubble, PhaseBoundary dew, Optional<CriticalPoint> critical) {
        this.composition = composition;
        this.critical = critical;
        this.feed = composition.moleFractions();
        this.bubble = ended(bubble, critical);
        this.dew = bubble == dew ? this.bubble : ended(dew, critical);
        beyond = new ArrayList<>();
        List<BoundaryEnd> ends = new ArrayList<>(List.of(this.bubble.end(), this.dew.end()));
        ends.addAll(bubble.turns());
        ends.addAll(dew.turns());
        critical.ifPresent(
                c -> ends.add(new BoundaryEnd(BoundaryEnd.Kind.CRITICAL_POINT, c.temperatureK(), c.pressurePa())));
        warmest = ends.stream()
                .max(Comparator.comparingDouble(BoundaryEnd::temperatureK))
                .orElseThrow();
        highest = ends.stream()
                .max(Comparator.comparingDouble(BoundaryEnd::pressurePa))
                .orElseThrow();
        for (PhaseBoundary line : bubble == dew ? List.of(bubble) : List.of(bubble, dew)) {
            List<Node> nodes = line.beyond();
            for (int k = 0; k + 1 < nodes.size(); k++) {
                beyond.add(new Piece(line, new BoundaryPiece(nodes.get(k), nodes.get(k + 1))));
            }
        }
    }

    static Envelope of(FixedComposition composition) {
        try {
            return traced(composition);
        } catch (ConvergenceException lost) {
            throw composition.mixture().size() == 1
                    ? lost
                    : SecondLiquid.reason(composition, PhaseBoundary.coldest(composition), lost);
        }
    }

    private static Envelope traced(FixedComposition composition) {
        PhaseBoundary bubble = PhaseBoundary.of(composition, true);
        PhaseBoundary dew = composition.mixture().size() == 1 ? bubble : PhaseBoundary.of(composition, false);
        whole(bubble);
        whole(dew);
        return new Envelope(
                composition, bubble, dew, critical(composition, bubble).or(() -> critical(composition, dew)));
    }

    /** Where a line was lost far from the critical point nothing tells the phases between there and the other line. */
    private static void whole(PhaseBoundary line) {
        if (!line.reachesCriticalPoint() && line.last().s() > BESIDE_CRITICAL_POINT) {
            throw new ConvergenceException(
                    "phase boundary: lost at " + line.end().temperatureK() + " K, far from its critical point");
        }
    }

    private static Optional<CriticalPoint> critical(FixedComposition composition, PhaseBoundary line) {
        if (!line.reachesCriticalPoint()) {
            return Optional.empty();
        }
        Node last = line.last();
        // the density of the feed is half of S away from the critical one
        double half = last.s() / 2;
        return new CriticalPointSolver(composition)
                .near(Math.exp(last.logTemperature()), Math.exp(last.x()[0] + (line.feedIsLiquid() ? -half : half)));
    }

    private static PhaseBoundary ended(PhaseBoundary line, Optional<CriticalPoint> critical) {
        return critical.isPresent() && line.end().kind() == BoundaryEnd.Kind.CRITICAL_POINT
                ? line.endingAt(critical.get())
                : line;
    }

    /** Mole fractions, not to be changed. */
    double[] feed() {
        return feed;
    }

    Optional<CriticalPoint> critical() {
        return critical;
    }

    /** The warmest point of the two-phase region. */
    BoundaryEnd warmest() {
        return warmest;
    }

    /** The point of the highest pressure of the two-phase region. */
    BoundaryEnd highest() {
        return highest;
    }

    /** Points beyond the ends of the lines at a temperature or pressure, solved. */
    List<IncipientPhase> beyond(Specified specified, double target) {
        List<IncipientPhase> found = new ArrayList<>();
        for (Piece piece : beyond) {
            if (piece.piece.holds(specified, target)) {
                found.add(piece.line.solve(specified, target, piece.piece));
            }
        }
        return found;
    }
}

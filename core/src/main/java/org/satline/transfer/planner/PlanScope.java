package org.satline.transfer.planner;

import java.util.ArrayList;
import java.util.List;
import org.satline.transfer.hookup.Act.Kind;
import org.satline.transfer.hookup.Manifold;
import org.satline.transfer.hookup.ServiceCylinder;
import org.satline.transfer.transition.PlanMove;
import org.satline.transfer.transition.PlanParts;
import org.satline.transfer.transition.PlanState;

/**
 * The moves that are worth trying in one phase.
 *
 * @param forced moves that are made as soon as each is possible, because nothing depends on their order
 * @param turns turning hoses round, which comes before forced moves
 * @param moves the others, in the order in which equals are preferred
 */
record PlanScope(List<PlanMove> forced, List<PlanMove> turns, List<PlanMove> moves) {
    /** Collects moves by name; what is not part of the hook-up is left out. */
    static final class Builder {
        private final PlanParts parts;
        private final PlanState start;
        private final List<PlanMove> forced = new ArrayList<>();
        private final List<PlanMove> turns = new ArrayList<>();
        private final List<PlanMove> moves = new ArrayList<>();

        Builder(PlanState start) {
            this.start = start;
            this.parts = start.parts();
        }

        Builder force(int end, String to) {
            int connection = parts.connections().indexOf(to);
            if (end >= 0 && connection >= 0) {
                forced.add(new PlanMove(Kind.CONNECT_TIGHT, end, connection));
            }
            return this;
        }

        Builder turn(int hose) {
            if (hose >= 0
                    && parts.hoses().get(hose).systemEnd()
                            != parts.hoses().get(hose).cylinderEnd()) {
                turns.add(new PlanMove(Kind.TURN_ROUND, hose, PlanParts.NONE));
                moves.add(new PlanMove(Kind.TURN_ROUND, hose, PlanParts.NONE));
            }
            return this;
        }

        Builder connect(int end, String to, boolean looseToo) {
            int connection = parts.connections().indexOf(to);
            if (end >= 0 && connection >= 0) {
                moves.add(new PlanMove(Kind.CONNECT_TIGHT, end, connection));
                if (looseToo) {
                    moves.add(new PlanMove(Kind.CONNECT_LOOSE, end, connection));
                    moves.add(new PlanMove(Kind.TIGHTEN, end, PlanParts.NONE));
                    if (start.at(end) >= 0) {
                        moves.add(new PlanMove(Kind.LOOSEN, end, PlanParts.NONE));
                    }
                }
            }
            return this;
        }

        Builder takeOff(int end) {
            if (end >= 0) {
                moves.add(new PlanMove(Kind.TAKE_OFF, end, PlanParts.NONE));
            }
            return this;
        }

        Builder valve(String name, Kind... kinds) {
            int valve = parts.valves().indexOf(name);
            if (valve >= 0) {
                for (Kind kind : kinds) {
                    moves.add(new PlanMove(kind, valve, PlanParts.NONE));
                }
            }
            return this;
        }

        /** Opens a valve; shuts it only where it was open before. */
        Builder opening(String name) {
            int valve = parts.valves().indexOf(name);
            valve(name, Kind.OPEN);
            return valve >= 0 && start.isOpen(valve) ? valve(name, Kind.CLOSE) : this;
        }

        Builder handOpening(int hose) {
            return hose < 0
                    ? this
                    : opening(parts.ends().get(2 * hose)).opening(parts.ends().get(2 * hose + 1));
        }

        Builder hand(int hose, Kind... kinds) {
            return hose < 0
                    ? this
                    : valve(parts.ends().get(2 * hose), kinds)
                            .valve(parts.ends().get(2 * hose + 1), kinds);
        }

        Builder ports(Kind... kinds) {
            parts.ports().forEach(port -> valve(port.name(), kinds));
            return this;
        }

        Builder cap(String connection) {
            int at = parts.connections().indexOf(connection);
            if (at >= 0) {
                moves.add(new PlanMove(Kind.CAP, at, PlanParts.NONE));
            }
            return this;
        }

        Builder uncap(String connection) {
            int at = parts.connections().indexOf(connection);
            if (at >= 0) {
                moves.add(new PlanMove(Kind.UNCAP, at, PlanParts.NONE));
                moves.add(new PlanMove(Kind.CAP, at, PlanParts.NONE));
            }
            return this;
        }

        Builder pump() {
            if (parts.hookUp().pump()) {
                moves.add(new PlanMove(Kind.START, 0, PlanParts.NONE));
                moves.add(new PlanMove(Kind.STOP, 0, PlanParts.NONE));
                valve(Manifold.VACUUM_VALVE, Kind.OPEN, Kind.CLOSE);
            }
            return this;
        }

        Builder invert(int cylinder, boolean on) {
            if (cylinder >= 0 && parts.cylinders().get(cylinder).valves() == ServiceCylinder.Valves.ONE) {
                moves.add(new PlanMove(on ? Kind.INVERT : Kind.SET_UPRIGHT, cylinder, PlanParts.NONE));
            }
            return this;
        }

        Builder waiting() {
            if (!moves.contains(PlanGoals.WAIT)) {
                moves.add(PlanGoals.WAIT);
            }
            return this;
        }

        PlanScope build() {
            return new PlanScope(List.copyOf(forced), List.copyOf(turns), List.copyOf(moves));
        }
    }
}

package org.satline.transfer.planner;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.satline.transfer.transition.PlanHand;
import org.satline.transfer.transition.PlanMove;
import org.satline.transfer.transition.PlanState;

/** Breadth first over the moves of one phase: the first goal found has the fewest acts, and of those the first in the order of moves. */
final class PlanSearch {
    /** The most states looked at: beyond it the search gives up and there is no plan. */
    private static final int MOST_STATES = 5_000;

    private final PlanHand hand;

    PlanSearch(PlanHand hand) {
        this.hand = hand;
    }

    /** A state on the way and how it was reached. */
    record Node(
            PlanState state, @Nullable Node from, @Nullable PlanMove move, int depth) {
        List<PlanMove> moves() {
            List<PlanMove> moves = new ArrayList<>();
            for (Node at = this; at.move != null && at.from != null; at = at.from) {
                moves.add(0, at.move);
            }
            return moves;
        }
    }

    /**
     * Searches.
     *
     * @param start how things stand
     * @param scope the moves worth trying
     * @param deepest the most moves
     * @param goal where it ends
     * @return the way there; null where there is none
     */
    @Nullable
    Node find(PlanState start, PlanScope scope, int deepest, Predicate<PlanState> goal) {
        Deque<Node> queue = new ArrayDeque<>();
        Set<PlanState> seen = new HashSet<>();
        queue.add(new Node(start, null, null, 0));
        seen.add(start);
        while (!queue.isEmpty()) {
            Node node = queue.remove();
            if (goal.test(node.state())) {
                return node;
            }
            if (seen.size() > MOST_STATES) {
                return null;
            }
            if (node.depth() == deepest) {
                continue;
            }
            Node done = null;
            for (int i = 0; done == null && i < scope.forced().size(); i++) {
                done = step(node, scope.forced().get(i));
            }
            if (done != null && seen.add(done.state())) {
                queue.add(done);
            }
            for (PlanMove move : done == null ? scope.moves() : scope.turns()) {
                Node next = step(node, move);
                if (next != null && seen.add(next.state())) {
                    queue.add(next);
                }
            }
        }
        return null;
    }

    private @Nullable Node step(Node node, PlanMove move) {
        PlanState next = hand.after(node.state(), move);
        return next == null ? null : new Node(next, node, move, node.depth() + 1);
    }
}

package org.satline.audit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.satline.audit.answer.Heard;
import org.satline.audit.cause.Mistake;

/** One pass over the rows of a source, a batch at a time, each batch on all processors; what comes out keeps the order of the rows. */
final class Pass {
    private static final int BATCH = 4096;

    /** A row waits for the next of its column no longer than for so many others. */
    private static final int MOST_WAITING = 20_000;

    private Pass() {}

    /** Answers rows. */
    static void over(AuditSource source, Function<AuditSource.Entry, Heard> answer, Consumer<Heard> taker) {
        List<AuditSource.Entry> batch = new ArrayList<>(BATCH);
        source.read(entry -> {
            batch.add(entry);
            if (batch.size() == BATCH) {
                batch.stream().parallel().map(answer).toList().forEach(taker);
                batch.clear();
            }
        });
        batch.stream().parallel().map(answer).toList().forEach(taker);
    }

    /** Counts rows and hands them out in order, each as soon as it is known what stands beside it. */
    static final class Counting {
        private static final class Waiting {
            private final Heard heard;
            private Optional<List<Mistake>> mistakes = Optional.empty();

            Waiting(Heard heard) {
                this.heard = heard;
            }
        }

        private final Tally tally;
        private final Consumer<AuditedRow> taker;
        private final Deque<Waiting> waiting = new ArrayDeque<>();
        private final Seating<Waiting> seating;

        Counting(Tally tally, Consumer<AuditedRow> taker) {
            this.tally = tally;
            this.taker = taker;
            this.seating = new Seating<>((row, place) -> place.mistakes = Optional.of(tally.add(row)));
        }

        void add(Heard heard) {
            Waiting place = new Waiting(heard);
            waiting.add(place);
            if (heard.made().isEmpty() || tally.isEmpty()) {
                place.mistakes = Optional.of(List.of());
            } else {
                seating.add(heard.made().get(), place);
            }
            flush(MOST_WAITING);
        }

        void finish() {
            seating.finish();
            flush(0);
        }

        private void flush(int most) {
            while (!waiting.isEmpty() && (waiting.element().mistakes.isPresent() || waiting.size() > most)) {
                Waiting first = waiting.remove();
                taker.accept(new AuditedRow(first.heard.outcome(), first.mistakes.orElse(List.of())));
            }
        }
    }
}

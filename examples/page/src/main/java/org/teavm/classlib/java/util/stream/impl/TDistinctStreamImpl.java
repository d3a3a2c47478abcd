package org.teavm.classlib.java.util.stream.impl;

import java.util.HashSet;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Stands in for the stream of distinct elements of the compiler's library, which forgets what it has seen whenever it
 * is asked for the next element, as
 * sorting and joining do.
 *
 * @param <T> type of the elements
 */
public class TDistinctStreamImpl<T> extends TWrappingStreamImpl<T, T> {
    private final Set<T> seen = new HashSet<>();

    /**
     * Made by {@code Stream.distinct}.
     *
     * @param innerStream what it takes its elements from
     */
    public TDistinctStreamImpl(TSimpleStreamImpl<T> innerStream) {
        super(innerStream);
    }

    @Override
    protected Predicate<T> wrap(Predicate<? super T> consumer) {
        return element -> !seen.add(element) || consumer.test(element);
    }
}

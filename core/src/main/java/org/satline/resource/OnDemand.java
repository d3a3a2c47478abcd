package org.satline.resource;

import org.jspecify.annotations.Nullable;

/**
 * Something read from a resource when it is first asked for, and kept. Thread-safe. For static fields: a damaged resource read by a static
 * initializer would reach the caller as an {@link ExceptionInInitializerError} once and as a {@link NoClassDefFoundError} ever after; here
 * each call throws what the reader throws.
 *
 * @param <T> type of what is read
 */
public abstract class OnDemand<T> {
    private volatile @Nullable T value;

    /** For subclasses, which need no lambda: a cold virtual machine makes a class faster. */
    protected OnDemand() {}

    /**
     * Reads it.
     *
     * @return what was read
     * @throws ResourceFormatException if the resource is broken
     */
    protected abstract T read();

    /**
     * Returns what the resource holds.
     *
     * @return the same object at each call
     * @throws ResourceFormatException if the resource is broken
     */
    public final T get() {
        T known = value;
        if (known == null) {
            synchronized (this) {
                known = value;
                if (known == null) {
                    known = read();
                    value = known;
                }
            }
        }
        return known;
    }
}

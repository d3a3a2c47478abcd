package org.teavm.classlib.java.util;

/**
 * Stands in for {@link java.util.SplittableRandom}, which the compiler's class library lacks: SplitMix64 of Steele, Lea and Flood, Fast
 * splittable pseudorandom number generators, OOPSLA 2014, with the draws that the library makes. Same seed, same draws as on a JVM. For one
 * thread.
 */
public final class TSplittableRandom {
    private static final long GOLDEN = 0x9e3779b97f4a7c15L;
    /** The value of the lowest of the 53 bits of a double in [0, 1[. */
    private static final double LOWEST_BIT = 0x1.0p-53;

    private static final int FEWEST_CHANGES = 24;

    private final long gamma;
    private long seed;

    /**
     * Begins a row of draws.
     *
     * @param seed same seed, same draws
     */
    public TSplittableRandom(long seed) {
        this(seed, GOLDEN);
    }

    private TSplittableRandom(long seed, long gamma) {
        this.seed = seed;
        this.gamma = gamma;
    }

    private long next() {
        seed += gamma;
        return seed;
    }

    private static long mixed(long bits, int first, long by, int second, long byThen) {
        long z = (bits ^ bits >>> first) * by;
        return (z ^ z >>> second) * byThen;
    }

    private long nextLong() {
        long z = mixed(next(), 30, 0xbf58476d1ce4e5b9L, 27, 0x94d049bb133111ebL);
        return z ^ z >>> 31;
    }

    private int nextInt() {
        return (int) (mixed(next(), 33, 0x62a9d9ed799705f5L, 28, 0xcb24d0a5c88c35b3L) >>> 32);
    }

    /**
     * A row of draws of its own.
     *
     * @return the other row
     */
    public TSplittableRandom split() {
        long own = nextLong();
        long z = mixed(next(), 33, 0xff51afd7ed558ccdL, 33, 0xc4ceb9fe1a85ec53L);
        long odd = (z ^ z >>> 33) | 1;
        return new TSplittableRandom(
                own, Long.bitCount(odd ^ odd >>> 1) < FEWEST_CHANGES ? odd ^ 0xaaaaaaaaaaaaaaaaL : odd);
    }

    /**
     * A number in [0, 1[.
     *
     * @return the number
     */
    public double nextDouble() {
        return (nextLong() >>> 11) * LOWEST_BIT;
    }

    /**
     * A whole number.
     *
     * @param bound above zero
     * @return a number in [0, bound[
     */
    public int nextInt(int bound) {
        return nextInt(0, bound);
    }

    /**
     * A whole number.
     *
     * @param origin the least
     * @param bound above the largest, at most 2^31 - 1 above the least
     * @return a number in [origin, bound[
     */
    public int nextInt(int origin, int bound) {
        int count = bound - origin;
        if (count <= 0) {
            throw new IllegalArgumentException("bound " + bound + " is not above " + origin + "; widen the interval");
        }
        int most = count - 1;
        int drawn = nextInt();
        if ((count & most) == 0) {
            return (drawn & most) + origin;
        }
        int positive = drawn >>> 1;
        int rest = positive % count;
        // in the last stretch, which is not whole, small numbers would come more often
        while (positive + most - rest < 0) {
            positive = nextInt() >>> 1;
            rest = positive % count;
        }
        return rest + origin;
    }
}

package org.satline.fleet;

/**
 * Random numbers that depend on their keys alone, so that any reading of any unit can be made anew anywhere, in any
 * order. Mixing function of SplitMix64: Steele, Lea and Flood 2014, Fast splittable pseudorandom number generators,
 * OOPSLA; constants from memory.
 */
final class Draw {
    private static final double TO_UNIT = 0x1p-53;

    private Draw() {}

    static long bits(long seed, long a, long b, long salt) {
        return mix(mix(mix(seed + 0x9E3779B97F4A7C15L * salt) ^ a) + 0x632BE59BD9B4E019L * b);
    }

    /** Uniform in [0, 1[. */
    static double uniform(long seed, long a, long b, long salt) {
        return (bits(seed, a, b, salt) >>> 11) * TO_UNIT;
    }

    static double between(double low, double high, double uniform) {
        return low + (high - low) * uniform;
    }

    /** Close to standard normal: the sum of four 16-bit uniforms, scaled to unit variance; never beyond 3.5. */
    static double normal(long bits) {
        long sum = (bits & 0xFFFF) + (bits >>> 16 & 0xFFFF) + (bits >>> 32 & 0xFFFF) + (bits >>> 48);
        return (sum / 65536.0 - 2) * 1.7320508;
    }

    static double normal(long seed, long a, long b, long salt) {
        return normal(bits(seed, a, b, salt));
    }

    static long mix(long value) {
        long z = (value ^ value >>> 30) * 0xBF58476D1CE4E5B9L;
        z = (z ^ z >>> 27) * 0x94D049BB133111EBL;
        return z ^ z >>> 31;
    }
}

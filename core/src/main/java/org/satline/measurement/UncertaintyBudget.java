package org.satline.measurement;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Where the uncertainty of a value comes from: for each origin the signed product of sensitivity and standard uncertainty,
 * in the unit of the value. Immutable, thread-safe.
 *
 * <p>Errors of one origin are the same error (correlation coefficient 1) wherever they appear; errors of different origins are
 * independent. With this the law of propagation of JCGM 100:2008 clauses 5.1.2 and 5.2.2 is
 * {@code u_c^2 = sum over origins (sum_i c_i u_i)^2}. A partly correlated error is entered as two origins, a common and an own one.
 */
public final class UncertaintyBudget {
    /** Coverage factor k for a level of confidence of about 95 % (JCGM 100:2008, 6.3.3). */
    public static final double USUAL_COVERAGE_FACTOR = 2;

    private static final UncertaintyBudget NONE = new UncertaintyBudget(Map.of());

    private final Map<String, Double> contributions;

    private UncertaintyBudget(Map<String, Double> contributions) {
        this.contributions = Collections.unmodifiableMap(contributions);
    }

    /**
     * The budget of an exactly known value.
     *
     * @return the empty budget
     */
    public static UncertaintyBudget none() {
        return NONE;
    }

    /**
     * The budget with one origin.
     *
     * @param origin what the error belongs to, for example {@code clamp thermometer, calibration}
     * @param standardUncertainty u, in the unit of the value; finite, not negative
     * @return the budget
     * @throws IllegalArgumentException if the uncertainty is negative or not finite
     */
    public static UncertaintyBudget of(String origin, double standardUncertainty) {
        Objects.requireNonNull(origin, "origin");
        if (!(standardUncertainty >= 0 && standardUncertainty < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "standard uncertainty of " + origin + " is " + standardUncertainty
                            + ", expected a finite number not below 0; give the standard deviation, in the unit of the reading");
        }
        return standardUncertainty == 0 ? NONE : new UncertaintyBudget(Map.of(origin, standardUncertainty));
    }

    /**
     * The budget with one origin whose expanded uncertainty is stated, k = {@value #USUAL_COVERAGE_FACTOR}.
     *
     * @param origin what the error belongs to
     * @param expandedUncertainty U, in the unit of the value; finite, not negative
     * @return the budget
     * @throws IllegalArgumentException if the uncertainty is negative or not finite
     */
    public static UncertaintyBudget ofExpanded(String origin, double expandedUncertainty) {
        return of(origin, StandardUncertainty.ofExpanded(expandedUncertainty, USUAL_COVERAGE_FACTOR));
    }

    /**
     * The budget of {@code c x}, for x having this budget.
     *
     * @param sensitivity c = df/dx; finite
     * @return the scaled budget
     * @throws IllegalArgumentException if the sensitivity is not finite
     */
    public UncertaintyBudget scaled(double sensitivity) {
        if (!Double.isFinite(sensitivity)) {
            throw new IllegalArgumentException("sensitivity " + sensitivity + " is not finite");
        }
        if (sensitivity == 0) {
            return NONE;
        }
        Map<String, Double> scaled = new LinkedHashMap<>();
        contributions.forEach((origin, value) -> scaled.put(origin, sensitivity * value));
        return new UncertaintyBudget(scaled);
    }

    /**
     * The budget of {@code x + y}; errors of the same origin add with their signs.
     *
     * @param other the budget of y
     * @return the budget of the sum
     */
    public UncertaintyBudget plus(UncertaintyBudget other) {
        Map<String, Double> sum = new LinkedHashMap<>(contributions);
        other.contributions.forEach((origin, value) -> sum.merge(origin, value, Double::sum));
        return new UncertaintyBudget(sum);
    }

    /**
     * The budget of {@code x - y}.
     *
     * @param other the budget of y
     * @return the budget of the difference
     */
    public UncertaintyBudget minus(UncertaintyBudget other) {
        return plus(other.scaled(-1));
    }

    /**
     * Combined standard uncertainty.
     *
     * @return u_c, in the unit of the value; not negative
     */
    public double combined() {
        return Math.sqrt(covariance(this));
    }

    /**
     * Expanded uncertainty, k = {@value #USUAL_COVERAGE_FACTOR}.
     *
     * @return U = k u_c, in the unit of the value; not negative
     */
    public double expanded() {
        return USUAL_COVERAGE_FACTOR * combined();
    }

    /**
     * Covariance with another value, from the origins both share.
     *
     * @param other the budget of the other value
     * @return u(x, y), in the product of the two units
     */
    public double covariance(UncertaintyBudget other) {
        double sum = 0;
        for (Map.Entry<String, Double> entry : contributions.entrySet()) {
            sum += entry.getValue() * other.contributions.getOrDefault(entry.getKey(), 0.0);
        }
        return sum;
    }

    /**
     * The contributions in the order in which they came in.
     *
     * @return origin to signed contribution, in the unit of the value; unmodifiable
     */
    public Map<String, Double> contributions() {
        return contributions;
    }

    /**
     * The origin that contributes most.
     *
     * @return the origin, empty for an exactly known value
     */
    public Optional<String> largestOrigin() {
        return contributions.entrySet().stream()
                .filter(entry -> entry.getValue() != 0)
                .max((a, b) -> Double.compare(Math.abs(a.getValue()), Math.abs(b.getValue())))
                .map(Map.Entry::getKey);
    }

    /**
     * The budget with one origin taken out: what would be left with a perfect instrument in its place.
     *
     * @param origin the origin to take out
     * @return the rest
     */
    public UncertaintyBudget without(String origin) {
        Map<String, Double> rest = new LinkedHashMap<>(contributions);
        rest.remove(origin);
        return new UncertaintyBudget(rest);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof UncertaintyBudget that && contributions.equals(that.contributions);
    }

    @Override
    public int hashCode() {
        return contributions.hashCode();
    }

    @Override
    public String toString() {
        return "u = " + combined() + " from " + contributions;
    }
}

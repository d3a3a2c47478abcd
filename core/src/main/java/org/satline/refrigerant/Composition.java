package org.satline.refrigerant;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.satline.quantity.Parts;

/**
 * What a refrigerant consists of, by mass and by mole. The order of the components does not matter to equality. Immutable and thread-safe.
 */
public final class Composition {
    /** Fractions may miss 1 by this much; they are then divided by their sum. */
    private static final double SUM_TOLERANCE = 1e-6;
    /** A sum that misses 1 by no more than this does so by the rounding of up to 20 additions: the fractions stay as given. */
    private static final double ROUND_OFF = 1e-14;

    /** Mass fractions this near are one: some thousand times the round-off between mass and mole, a thousandth of what is printed. */
    private static final double SAME = 1e-9;

    private static final int MOST_COMPONENTS = 20;
    /** The least fraction that may be given: nobody charges or finds less, and the solvers are proved down to here. */
    public static final double LEAST = 1e-7;

    private static final MathContext PRINTED_DIGITS = new MathContext(6, RoundingMode.HALF_EVEN);

    private final List<Component> components;

    /**
     * One substance of a composition.
     *
     * @param substance a pure substance
     * @param massFraction w, above 0, at most 1
     * @param moleFraction x, above 0, at most 1
     */
    public record Component(Refrigerant substance, double massFraction, double moleFraction) {
        /** {@inheritDoc} */
        public Component {
            Parts.required("substance", substance);
            if (substance.isBlend()) {
                throw new IllegalArgumentException(
                        substance.designation() + " is itself a blend; name its components instead");
            }
            if (!(massFraction > 0 && massFraction <= 1 && moleFraction > 0 && moleFraction <= 1)) {
                throw new IllegalArgumentException(
                        "mass fraction " + massFraction + " or mole fraction " + moleFraction + " of "
                                + substance.designation() + " is outside (0, 1]; leave out components that are absent");
            }
        }
    }

    private Composition(List<Component> components) {
        this.components = List.copyOf(components);
    }

    static Composition pure(Refrigerant substance) {
        return new Composition(List.of(new Component(substance, 1, 1)));
    }

    /**
     * Makes a composition from mass fractions.
     *
     * @param massFractions mass fractions by substance, each at least 1e-7, of the whole blend (sum 1); iteration order is kept
     * @return the composition
     * @throws IllegalArgumentException if a fraction or the sum is wrong, or a key is itself a blend
     */
    public static Composition ofMassFractions(Map<Refrigerant, Double> massFractions) {
        return of(massFractions, "mass", true);
    }

    /**
     * Makes a composition from mole fractions.
     *
     * @param moleFractions mole fractions by substance, each at least 1e-7, of the whole blend (sum 1); iteration order is kept
     * @return the composition
     * @throws IllegalArgumentException if a fraction or the sum is wrong, or a key is itself a blend
     */
    public static Composition ofMoleFractions(Map<Refrigerant, Double> moleFractions) {
        return of(moleFractions, "mole", false);
    }

    /**
     * Takes components with both fractions as they are, such as those that {@link #components()} gave and a file kept: no digit changes.
     *
     * @param components at least one, each substance once; both fractions sum to 1 within 1e-6 and belong together
     * @return the composition
     * @throws IllegalArgumentException if the fractions do not sum to 1 or do not belong together
     */
    public static Composition ofComponents(List<Component> components) {
        Parts.required("components", components);
        Map<Refrigerant, Double> massFractions = new LinkedHashMap<>();
        for (Component component : components) {
            if (massFractions.put(component.substance(), component.massFraction()) != null) {
                throw new IllegalArgumentException(
                        component.substance().designation() + " is named twice; add its fractions up");
            }
        }
        Composition byMass = ofMassFractions(massFractions);
        for (int i = 0; i < components.size(); i++) {
            double given = components.get(i).moleFraction();
            double computed = byMass.components.get(i).moleFraction();
            if (!(Math.abs(given - computed) <= SUM_TOLERANCE)) {
                throw new IllegalArgumentException("mole fraction " + given + " of "
                        + components.get(i).substance().designation()
                        + " does not belong to its mass fraction, which gives "
                        + computed + "; give fractions of one kind");
            }
        }
        return new Composition(components);
    }

    private static Composition of(Map<Refrigerant, Double> given, String kind, boolean byMass) {
        Objects.requireNonNull(given, "fractions");
        List<Map.Entry<Refrigerant, Double>> entries = new ArrayList<>(given.entrySet());
        if (entries.isEmpty() || entries.size() > MOST_COMPONENTS) {
            throw new IllegalArgumentException(entries.size() + " components are outside [1, " + MOST_COMPONENTS
                    + "]; name the components of the blend");
        }
        double sum = 0;
        Set<String> seen = new HashSet<>();
        for (Map.Entry<Refrigerant, Double> entry : entries) {
            Refrigerant substance = Objects.requireNonNull(entry.getKey(), "substance");
            double fraction = Objects.requireNonNull(entry.getValue(), "fraction");
            if (substance.isBlend()) {
                throw new IllegalArgumentException(
                        substance.designation() + " is itself a blend; name its components instead");
            }
            if (!seen.add(substance.designation())) {
                throw new IllegalArgumentException(substance.designation() + " is named twice; add its fractions up");
            }
            if (!(fraction >= LEAST && fraction <= 1 + SUM_TOLERANCE)) {
                throw new IllegalArgumentException(String.format(
                        Locale.ROOT,
                        "%s fraction %s of %s is outside [%s, 1]; leave out components that are absent",
                        kind,
                        fraction,
                        substance.designation(),
                        LEAST));
            }
            sum += fraction;
        }
        if (!(Math.abs(sum - 1) <= SUM_TOLERANCE)) {
            String list = entries.stream()
                    .map(e -> e.getKey().designation() + ": " + e.getValue())
                    .collect(Collectors.joining(", ", "[", "]"));
            throw new IllegalArgumentException(kind + " fractions sum to " + sum + ", expected 1 within "
                    + SUM_TOLERANCE + ": " + list + "; give them as fractions of the whole blend");
        }
        return new Composition(components(entries, sum, byMass));
    }

    private static List<Component> components(
            List<Map.Entry<Refrigerant, Double>> entries, double sum, boolean byMass) {
        double otherSum = 0;
        for (Map.Entry<Refrigerant, Double> entry : entries) {
            double molarMass = entry.getKey().molarMassKilogramsPerMole();
            otherSum += byMass ? entry.getValue() / molarMass : entry.getValue() * molarMass;
        }
        double whole = Math.abs(sum - 1) <= ROUND_OFF ? 1 : sum;
        List<Component> components = new ArrayList<>();
        for (Map.Entry<Refrigerant, Double> entry : entries) {
            double molarMass = entry.getKey().molarMassKilogramsPerMole();
            double given = entry.getValue() / whole;
            double other = (byMass ? entry.getValue() / molarMass : entry.getValue() * molarMass) / otherSum;
            components.add(new Component(entry.getKey(), byMass ? given : other, byMass ? other : given));
        }
        return components;
    }

    /**
     * Returns the components.
     *
     * @return at least one, in the order given
     */
    public List<Component> components() {
        return components;
    }

    /**
     * Returns the molar mass of the whole.
     *
     * @return M, kg/mol
     */
    public double molarMassKilogramsPerMole() {
        double sum = 0;
        for (Component component : components) {
            sum += component.moleFraction() * component.substance().molarMassKilogramsPerMole();
        }
        return sum;
    }

    /**
     * Tells whether two compositions are the same to the round-off of their fractions, such as one given by mass and the same by mole.
     *
     * @param other another composition
     * @return true if each substance has the same mass fraction in both within 1e-9
     */
    public boolean isSameAs(Composition other) {
        return components.size() == other.components.size()
                && components.stream()
                        .allMatch(part -> other.components.stream()
                                .anyMatch(each -> each.substance().equals(part.substance())
                                        && Math.abs(each.massFraction() - part.massFraction()) <= SAME));
    }

    @Override
    public boolean equals(Object other) {
        return this == other
                || (other instanceof Composition that
                        && components.size() == that.components.size()
                        && Set.copyOf(components).equals(Set.copyOf(that.components)));
    }

    @Override
    public int hashCode() {
        return Set.copyOf(components).hashCode(); // a sum, whatever the order
    }

    /** Prints components and mass per cent, such as {@code R-32/R-125 (50/50 % by mass)}. */
    @Override
    public String toString() {
        StringBuilder names = new StringBuilder();
        StringBuilder percents = new StringBuilder();
        for (Component component : components) {
            names.append(names.length() == 0 ? "" : "/")
                    .append(component.substance().designation());
            percents.append(percents.length() == 0 ? "" : "/").append(percent(component.massFraction()));
        }
        return names + " (" + percents + " % by mass)";
    }

    private static String percent(double fraction) {
        BigDecimal percent = BigDecimal.valueOf(fraction).movePointRight(2).round(PRINTED_DIGITS);
        return percent.signum() == 0 ? "0" : percent.stripTrailingZeros().toPlainString();
    }
}

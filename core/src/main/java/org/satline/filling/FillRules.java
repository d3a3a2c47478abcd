package org.satline.filling;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.satline.quantity.PlainText;
import org.satline.quantity.Temperature;
import org.satline.resource.CsvResource;
import org.satline.resource.OnDemand;
import org.satline.resource.ResourceFormatException;

/**
 * The book of fill rules, and the named sets made from them: {@code us} (49 CFR and the 80 % practice) and {@code adr} (packing
 * instruction P200, T50 for portable tanks). Immutable, thread-safe.
 *
 * <p>Symbols in the inequalities: m contents; Wc water capacity by mass; V volume; rho_l density of the liquid at the bubble point;
 * p vapour pressure at the bubble point; SG specific gravity against water at 60 degF; FD filling density in per cent; FR filling
 * ratio; SP marked service pressure; TP test pressure; T_max the warmest temperature stated; BP normal boiling point in K and d_l the
 * density of the liquid there in kg/L; d_g density of the gas at 15 degC and 1 bar in g/L.
 */
public final class FillRules {
    private static final OnDemand<FillRules> STANDARD = new OnDemand<>() {
        @Override
        protected FillRules read() {
            return ofBook();
        }
    };

    private final Map<String, FillRule> rules;
    private final Map<String, Jurisdiction> jurisdictions;

    private FillRules(Map<String, FillRule> rules, Map<String, Jurisdiction> jurisdictions) {
        this.rules = rules;
        this.jurisdictions = jurisdictions;
    }

    /**
     * The book that ships with the library, read when it is first asked for.
     *
     * @return the rules in the order of the book
     * @throws ResourceFormatException if the resource is broken
     */
    public static FillRules standard() {
        return STANDARD.get();
    }

    private static FillRules ofBook() {
        Map<String, FillRule> rules = new LinkedHashMap<>();
        Map<String, List<FillRule>> sets = new LinkedHashMap<>();
        CsvResource table = CsvResource.read(
                FillRules.class,
                "fill-rules.csv",
                "name",
                "jurisdiction",
                "basis",
                "method",
                "scope",
                "factor",
                "temperature_degC",
                "or_warmer",
                "inequality",
                "citation",
                "confirmation");
        for (CsvResource.Row row : table.rows()) {
            FillRule rule = rule(row);
            rules.put(rule.name(), rule);
            for (String set : row.text("jurisdiction").split(" ", -1)) {
                sets.computeIfAbsent(set, key -> new ArrayList<>()).add(rule);
            }
        }
        Map<String, Jurisdiction> jurisdictions = new LinkedHashMap<>();
        for (String name : List.of("us", "adr")) {
            jurisdictions.put(
                    name,
                    new Jurisdiction(
                            name,
                            sets.getOrDefault(name, List.of()),
                            sets.getOrDefault(name + "-recovered", List.of())));
        }
        return new FillRules(rules, jurisdictions);
    }

    private static FillRule rule(CsvResource.Row row) {
        OptionalDouble celsius = row.optionalNumber("temperature_degC");
        return new FillRule(
                row.text("name"),
                constant(row, "basis", FillRule.Basis.class),
                row.text("inequality"),
                row.text("citation"),
                constant(row, "confirmation", FillRule.Confirmation.class),
                constant(row, "method", FillRule.Method.class),
                constant(row, "scope", FillRule.Scope.class),
                row.optionalNumber("factor"),
                celsius.isPresent() ? Optional.of(Temperature.ofCelsius(celsius.getAsDouble())) : Optional.empty(),
                row.text("or_warmer").equals("yes"));
    }

    private static <E extends Enum<E>> E constant(CsvResource.Row row, String column, Class<E> type) {
        String text = row.text(column);
        try {
            return Enum.valueOf(type, text.toUpperCase(Locale.ROOT).replace('-', '_'));
        } catch (IllegalArgumentException e) {
            ResourceFormatException broken =
                    row.fault(column + " \"" + text + "\" is not one of the words of the head");
            broken.initCause(e);
            throw broken;
        }
    }

    /**
     * Returns all rules.
     *
     * @return the rules, in the order of the book
     */
    public List<FillRule> all() {
        return List.copyOf(rules.values());
    }

    /**
     * Finds a rule.
     *
     * @param name the name, in any case
     * @return the rule
     * @throws IllegalArgumentException if there is none of this name; the message lists the names
     */
    public FillRule rule(String name) {
        return found(rules, name, "fill rule");
    }

    /**
     * Finds a named set of rules.
     *
     * @param name {@code us} or {@code adr}, in any case
     * @return the set
     * @throws IllegalArgumentException if there is none of this name; the message lists the names
     */
    public Jurisdiction jurisdiction(String name) {
        return found(jurisdictions, name, "jurisdiction");
    }

    /**
     * Returns the set taken where none is named.
     *
     * @return the set {@code us}
     */
    public Jurisdiction defaultJurisdiction() {
        return jurisdiction("us");
    }

    private static <T> T found(Map<String, T> map, String name, String what) {
        return map.entrySet().stream()
                .filter(entry -> entry.getKey().equalsIgnoreCase(name.strip()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(what + " " + PlainText.quoted(name)
                        + " is unknown; take one of " + String.join(", ", map.keySet())));
    }
}

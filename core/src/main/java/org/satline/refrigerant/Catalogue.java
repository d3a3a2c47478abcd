package org.satline.refrigerant;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.satline.resource.OnDemand;

/**
 * All refrigerants known by name, and the tolerant look-up of names. Immutable and thread-safe. The figures of an entry are read when it is
 * first asked for; a damaged one is refused then.
 */
public final class Catalogue {
    /** Version of the figures in the catalogue and of the equations' coefficients; changes whenever one of them does. */
    static final String DATA_VERSION = "2026.1";

    private static final int FEWEST_SUGGESTIONS = 4;
    private static final int MOST_SUGGESTIONS = 12;

    private final Map<String, CatalogueEntry> byDesignation;
    /** Made when somebody first asks by another spelling than ours. */
    private volatile @Nullable Map<String, CatalogueEntry> byKey;

    private volatile @Nullable Map<String, CatalogueEntry> byChemicalName;

    /** Loaded when first asked for. */
    private static final OnDemand<Catalogue> STANDARD = new OnDemand<>() {
        @Override
        protected Catalogue read() {
            return new Catalogue(CatalogueReader.read());
        }
    };

    private Catalogue(Map<String, CatalogueEntry> byDesignation) {
        this.byDesignation = byDesignation;
    }

    // two threads may both make one of these maps: they are equal, and either is good
    private Map<String, CatalogueEntry> byKey() {
        Map<String, CatalogueEntry> keys = byKey;
        if (keys == null) {
            keys = new LinkedHashMap<>();
            for (CatalogueEntry entry : byDesignation.values()) {
                keys.put(NameKey.ofDesignation(entry.designation()), entry);
            }
            byKey = keys;
        }
        return keys;
    }

    private Map<String, CatalogueEntry> byChemicalName() {
        Map<String, CatalogueEntry> names = byChemicalName;
        if (names == null) {
            names = new HashMap<>();
            for (CatalogueEntry entry : byDesignation.values()) {
                if (!entry.isBlend()) {
                    names.put(NameKey.ofChemicalName(entry.refrigerant().name()), entry);
                    for (String other : entry.refrigerant().otherNames()) {
                        names.put(NameKey.ofChemicalName(other), entry);
                    }
                }
            }
            byChemicalName = names;
        }
        return names;
    }

    /**
     * Returns the catalogue that ships with this jar.
     *
     * @return the catalogue
     */
    public static Catalogue standard() {
        return STANDARD.get();
    }

    /**
     * Returns the version of the figures.
     *
     * @return version
     */
    public String dataVersion() {
        return DATA_VERSION;
    }

    /**
     * Returns all entries, substances first.
     *
     * @return unmodifiable list
     */
    public List<Refrigerant> all() {
        return byDesignation.values().stream().map(CatalogueEntry::refrigerant).toList();
    }

    /**
     * Returns the pure substances.
     *
     * @return unmodifiable list
     */
    public List<Refrigerant> substances() {
        return all().stream().filter(r -> !r.isBlend()).toList();
    }

    /**
     * Returns the blends.
     *
     * @return unmodifiable list
     */
    public List<Refrigerant> blends() {
        return all().stream().filter(Refrigerant::isBlend).toList();
    }

    /**
     * Finds a refrigerant by name. Case, blanks, hyphens and brackets do not matter; the {@code R} may be missing, or stand as the prefix
     * of the substance's family ({@code HFC-134a}); chemical names and a few formulas of substances are known too. Letters of another
     * script are refused, never left out.
     *
     * @param name designation or chemical name, such as {@code r454b}, {@code R 134a}, {@code ammonia}, {@code CO2}
     * @return the refrigerant
     * @throws UnknownRefrigerantException if the name is unknown or stands for several entries; it offers what may have been meant
     */
    public Refrigerant find(String name) {
        Refrigerant found = lookUp(name);
        if (found != null) {
            return found;
        }
        if (NameKey.holdsForeignLetters(name)) {
            throw new UnknownRefrigerantException(
                    name, "holds characters other than Latin letters, digits and their marks", List.of());
        }
        String key = NameKey.ofAnyText(name);
        List<String> longer = longer(key);
        if (longer.size() > 1) {
            throw new UnknownRefrigerantException(name, "may stand for several", longer);
        }
        Set<String> suggestions = new LinkedHashSet<>(longer);
        suggestions.addAll(nearest(key, NameKey.ofChemicalName(name)));
        throw new UnknownRefrigerantException(
                name,
                "is not in the catalogue",
                suggestions.stream().limit(FEWEST_SUGGESTIONS).toList());
    }

    /** Tells whether {@link #find} would answer. */
    boolean lists(String name) {
        return lookUp(name) != null;
    }

    private @Nullable Refrigerant lookUp(String name) {
        Objects.requireNonNull(name, "name");
        CatalogueEntry found = byDesignation.get(name);
        if (found == null) {
            found = byKey().get(NameKey.ofText(name));
        }
        if (found == null && !NameKey.holdsForeignLetters(name)) {
            found = byChemicalName().get(NameKey.ofChemicalName(name));
        }
        return found == null ? null : found.refrigerant();
    }

    /** Entries whose designation goes on where the key ends: isomers of a number, members of a series; none if there are too many. */
    private List<String> longer(String key) {
        if (key.isEmpty()) {
            return List.of();
        }
        List<String> longer = new ArrayList<>();
        for (Map.Entry<String, CatalogueEntry> entry : byKey().entrySet()) {
            String other = entry.getKey();
            boolean goesOn = other.length() > key.length() && other.startsWith(key);
            if (goesOn && !Character.isDigit(other.charAt(key.length()))) {
                longer.add(entry.getValue().designation());
            }
        }
        return longer.size() <= MOST_SUGGESTIONS ? longer : List.of();
    }

    /** Nearest designations; for a text that holds no designation, substances with a similar chemical name. */
    private List<String> nearest(String key, String chemicalName) {
        Map<CatalogueEntry, Integer> distances = new LinkedHashMap<>();
        if (!key.isEmpty()) {
            byKey().forEach((other, entry) -> {
                if (NameKey.slipOf(key, other)) {
                    distances.put(entry, NameKey.distance(key, other));
                }
            });
        }
        byChemicalName().forEach((other, entry) -> {
            if (NameKey.alike(chemicalName, other)) {
                distances.merge(entry, NameKey.distance(chemicalName, other), Math::min);
            }
        });
        return distances.entrySet().stream()
                .sorted(Map.Entry.comparingByValue())
                .limit(FEWEST_SUGGESTIONS)
                .map(entry -> entry.getKey().designation())
                .toList();
    }
}

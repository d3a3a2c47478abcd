package org.satline.refrigerant;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** All refrigerants known by name, and the tolerant look-up of names. Immutable and thread-safe. */
public final class Catalogue {
    /** Version of the figures in the catalogue and of the equations' coefficients; changes whenever one of them does. */
    static final String DATA_VERSION = "2026.1";

    private static final int MOST_SUGGESTIONS = 4;

    private final Map<String, Refrigerant> byDesignation;
    private final Map<String, Refrigerant> byKey;

    /** Loads the standard catalogue when first asked for. */
    private static final class Standard {
        static final Catalogue INSTANCE = new Catalogue(CatalogueReader.read());
    }

    private Catalogue(Collection<Refrigerant> entries) {
        byDesignation = new LinkedHashMap<>();
        byKey = new LinkedHashMap<>();
        for (Refrigerant entry : entries) {
            byDesignation.put(entry.designation(), entry);
            byKey.put(NameKey.ofDesignation(entry.designation()), entry);
        }
    }

    /**
     * Returns the catalogue that ships with this jar.
     *
     * @return the catalogue
     */
    public static Catalogue standard() {
        return Standard.INSTANCE;
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
        return List.copyOf(byDesignation.values());
    }

    /**
     * Returns the pure substances.
     *
     * @return unmodifiable list
     */
    public List<Refrigerant> substances() {
        return byDesignation.values().stream().filter(r -> !r.isBlend()).toList();
    }

    /**
     * Returns the blends.
     *
     * @return unmodifiable list
     */
    public List<Refrigerant> blends() {
        return byDesignation.values().stream().filter(Refrigerant::isBlend).toList();
    }

    /**
     * Finds a refrigerant by name. Case, blanks, hyphens, dots and brackets do not matter, the {@code R} may be missing or written out as a prefix of the
     * substance's family ({@code HFC-134a}), and chemical names of substances are known too.
     *
     * @param name designation or chemical name, such as {@code r454b}, {@code R 134a}, {@code ammonia}
     * @return the refrigerant
     * @throws UnknownRefrigerantException if the name is unknown or stands for several entries; it offers the nearest
     */
    public Refrigerant find(String name) {
        Objects.requireNonNull(name, "name");
        Refrigerant exact = byDesignation.get(name);
        if (exact != null) {
            return exact;
        }
        String key = NameKey.ofText(name);
        Refrigerant found = byKey.get(key);
        if (found != null) {
            return found;
        }
        found = byChemicalName(NameKey.letters(name));
        if (found != null) {
            return found;
        }
        List<String> longer = byKey.entrySet().stream()
                .filter(e -> !key.isEmpty() && e.getKey().startsWith(key))
                .map(e -> e.getValue().designation())
                .toList();
        if (longer.size() > 1 && longer.size() <= MOST_SUGGESTIONS) {
            throw new UnknownRefrigerantException(name, "stands for more than one", longer);
        }
        throw new UnknownRefrigerantException(name, "is not in the catalogue", nearest(key));
    }

    private @Nullable Refrigerant byChemicalName(String letters) {
        if (letters.isEmpty()) {
            return null;
        }
        for (Refrigerant entry : byDesignation.values()) {
            if (!entry.isBlend() && NameKey.letters(entry.name()).equals(letters)) {
                return entry;
            }
        }
        String alias = NameKey.formulaAlias(letters);
        return alias == null ? null : byDesignation.get(alias);
    }

    private List<String> nearest(String key) {
        List<Map.Entry<String, Refrigerant>> entries = new ArrayList<>(byKey.entrySet());
        entries.sort(Comparator.comparingInt(e -> NameKey.distance(key, e.getKey())));
        return entries.stream()
                .limit(MOST_SUGGESTIONS)
                .map(e -> e.getValue().designation())
                .toList();
    }
}

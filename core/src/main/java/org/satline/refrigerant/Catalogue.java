package org.satline.refrigerant;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
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
    /** Blends by what they consist of; made when somebody first asks. */
    private volatile @Nullable Map<Set<Refrigerant>, List<Refrigerant>> byParts;

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
                String key = entry.isOwn()
                        ? NameKey.ofText(entry.designation())
                        : NameKey.ofDesignation(entry.designation());
                if (!key.isEmpty()) {
                    keys.putIfAbsent(key, entry);
                }
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
                if (entry.isOwn()) {
                    // what a name stands for already it goes on to stand for
                    names.putIfAbsent(NameKey.ofChemicalName(entry.designation()), entry);
                } else if (!entry.isBlend()) {
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
     * The same catalogue with entries of the caller's own behind those that are there.
     *
     * @param more substances and blends, each with a name that is not taken
     * @return a new catalogue
     * @throws IllegalArgumentException if a name stands for an entry already, in whatever spelling
     */
    public Catalogue with(List<Refrigerant> more) {
        Catalogue grown = this;
        for (Refrigerant each : List.copyOf(more)) {
            if (grown.lists(each.designation())) {
                throw new IllegalArgumentException("\"" + each.designation()
                        + "\" stands for an entry of the catalogue already; give it a name of its own");
            }
            Map<String, CatalogueEntry> entries = new LinkedHashMap<>(grown.byDesignation);
            entries.put(each.designation(), CatalogueEntry.of(each));
            grown = new Catalogue(entries);
        }
        return grown;
    }

    /**
     * The same catalogue with the blends of a list. The list is CSV as {@link org.satline.resource.CsvResource} describes it, with the
     * columns
     * {@code blend,component,mass_percent}: one row for each component, the rows of a blend one below the other. Components are entries
     * of this catalogue.
     *
     * @param name name of the file, for messages
     * @param utf8 the whole file
     * @return a new catalogue
     * @throws org.satline.resource.ResourceFormatException if the file is not of that form, a component is unknown, or a name is taken;
     *     with file and line
     */
    public Catalogue withBlends(String name, byte[] utf8) {
        return with(new OwnBlends(this).read(name, utf8));
    }

    /**
     * Finds the listed refrigerant of a composition; the order of the components does not matter.
     *
     * @param composition what it consists of
     * @return the first listed one with the same fractions, to their round-off; empty if none has them
     */
    public Optional<Refrigerant> listed(Composition composition) {
        List<Composition.Component> parts = composition.components();
        if (parts.size() == 1) {
            Refrigerant substance = parts.get(0).substance();
            return all().contains(substance) ? Optional.of(substance) : Optional.empty();
        }
        Set<Refrigerant> substances = new HashSet<>();
        parts.forEach(part -> substances.add(part.substance()));
        return byParts().getOrDefault(substances, List.of()).stream()
                .filter(blend -> blend.composition().isSameAs(composition))
                .findFirst();
    }

    Refrigerant asListed(Refrigerant refrigerant) {
        CatalogueEntry entry = byDesignation.get(refrigerant.designation());
        return entry != null && entry.refrigerant().equals(refrigerant)
                ? refrigerant
                : listed(refrigerant.composition()).orElse(refrigerant);
    }

    private Map<Set<Refrigerant>, List<Refrigerant>> byParts() {
        Map<Set<Refrigerant>, List<Refrigerant>> known = byParts;
        if (known == null) {
            known = new HashMap<>();
            for (Refrigerant blend : blends()) {
                if (blend.hasComposition()) {
                    Set<Refrigerant> substances = new HashSet<>();
                    blend.composition().components().forEach(part -> substances.add(part.substance()));
                    known.computeIfAbsent(substances, parts -> new ArrayList<>())
                            .add(blend);
                }
            }
            byParts = known;
        }
        return known;
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

    @Override
    public String toString() {
        return "catalogue " + DATA_VERSION + " of " + byDesignation.size() + " entries";
    }
}

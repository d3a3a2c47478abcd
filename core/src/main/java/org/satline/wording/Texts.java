package org.satline.wording;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.satline.resource.TextResource;

/** The patterns of one language. Immutable, thread-safe. */
final class Texts {
    /** The files of a language, each with the texts of one room; a key is in one of them only. */
    static final List<String> FILES = List.of(
            "common", "safety", "filling", "cylinder", "duty", "transfer", "charge", "step", "visit", "audit", "steps");

    private final Map<String, TextPattern> patterns;

    private Texts(Map<String, TextPattern> patterns) {
        this.patterns = Map.copyOf(patterns);
    }

    /** English, which is always needed: read when it is first asked for. */
    private static final class English {
        static final Texts TEXTS = read(Language.ENGLISH);
    }

    static Texts in(Language language) {
        return language.equals(Language.ENGLISH) ? English.TEXTS : read(language);
    }

    private static Texts read(Language language) {
        return new Texts(Map.of()).with(Texts.class, language, FILES);
    }

    /** These texts and those of files beside a class. */
    Texts with(Class<?> neighbour, Language language, List<String> files) {
        Map<String, TextPattern> all = new LinkedHashMap<>(patterns);
        for (String file : files) {
            TextResource.find(neighbour, language.tag() + "/" + file + ".properties")
                    .ifPresent(texts -> addAll(texts, all));
        }
        return new Texts(all);
    }

    private static void addAll(TextResource texts, Map<String, TextPattern> patterns) {
        for (TextResource.Entry entry : texts.entries()) {
            TextPattern pattern;
            try {
                pattern = TextPattern.parse(entry.text());
            } catch (IllegalArgumentException e) {
                throw texts.fault(entry, String.valueOf(e.getMessage()));
            }
            if (patterns.putIfAbsent(entry.key(), pattern) != null) {
                throw texts.fault(entry, "is in the file of another room already; leave one out");
            }
        }
    }

    Optional<TextPattern> find(String key) {
        return Optional.ofNullable(patterns.get(key));
    }

    Set<String> keys() {
        return new TreeSet<>(patterns.keySet());
    }
}

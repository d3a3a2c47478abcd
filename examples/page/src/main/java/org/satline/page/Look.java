package org.satline.page;

import java.util.List;

/** Language, units and look, as the device remembers them. For the one thread of a page. */
final class Look {
    static final List<String> LANGUAGES = List.of("en", "es");
    static final List<String> LOOKS = List.of("auto", "day", "night");

    private String language = known("language", LANGUAGES, Browser.language());
    private String look = known("look", LOOKS, "auto");
    private String units = known("units", List.of("us", "si"), "us");

    private static String known(String name, List<String> allowed, String otherwise) {
        String found = Browser.remembered(name);
        String chosen = found.isEmpty() ? otherwise : found;
        return allowed.contains(chosen) ? chosen : allowed.get(0);
    }

    String language() {
        return language;
    }

    String name() {
        return look;
    }

    boolean isSi() {
        return units.equals("si");
    }

    String units() {
        return units;
    }

    void language(String tag) {
        language = tag;
        Browser.remember("language", tag);
    }

    void look(String name) {
        look = name;
        Browser.remember("look", name);
    }

    void units(String system) {
        units = system;
        Browser.remember("units", system);
    }
}

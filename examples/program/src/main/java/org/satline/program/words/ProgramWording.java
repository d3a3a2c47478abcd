package org.satline.program.words;

import java.util.List;
import org.satline.quantity.UnitSystem;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/** Words of the library and of the program in one language. Stateless, thread-safe. */
public final class ProgramWording {
    /** The files of a language; a key is in one of them only. */
    static final List<String> FILES = List.of("ask", "pictures", "reply", "exercise");

    private ProgramWording() {}

    /**
     * Makes the words for a reader; keep them, since making them reads their files.
     *
     * @param language the language; what it lacks is said in English
     * @param first which unit is printed first
     * @return the wording
     */
    public static Wording of(Language language, UnitSystem first) {
        return Wording.of(language, first).with(ProgramWording.class, FILES);
    }
}

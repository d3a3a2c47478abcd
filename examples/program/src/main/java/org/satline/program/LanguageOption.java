package org.satline.program;

import org.satline.wording.Language;
import picocli.CommandLine.Option;

/** The language of what a command prints; messages about a wrong command line or file are in English. */
final class LanguageOption {
    @Option(
            names = "--language",
            paramLabel = "LANGUAGE",
            defaultValue = "en",
            description =
                    "Language of what is printed, asked and drawn: en (English; default) or es (Spanish; its texts on"
                            + " safety were not reviewed by a native speaker).")
    private Tag tag = Tag.EN;

    /** Languages that are complete. */
    enum Tag {
        EN(Language.ENGLISH),
        ES(Language.SPANISH);

        @SuppressWarnings("ImmutableEnumChecker") // a language is a record of a text
        private final Language language;

        Tag(Language language) {
            this.language = language;
        }

        /** As it is typed. */
        @Override
        public String toString() {
            return language.tag();
        }
    }

    /** Made by the command line library. */
    LanguageOption() {}

    Language language() {
        return tag.language;
    }
}

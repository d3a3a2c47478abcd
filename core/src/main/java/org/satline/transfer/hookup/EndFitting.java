package org.satline.transfer.hookup;

import org.satline.explanation.Coded;

/** What a hose ends in. */
public enum EndFitting implements Coded {
    /** A small valve opened and closed by hand. */
    OPEN_CLOSE_VALVE("open-close valve", true),
    /** Opens by itself when screwed home and shuts when loosened. */
    SELF_SEALING("self-sealing end", false),
    /** A plain flare nut, open whenever it is not screwed to something closed. */
    PLAIN_FLARE("plain flare", true);

    private final String words;
    private final boolean passesWhenLoose;

    EndFitting(String words, boolean passesWhenLoose) {
        this.words = words;
        this.passesWhenLoose = passesWhenLoose;
    }

    /**
     * Tells whether gas can leave at this end while its joint is loose.
     *
     * @return false for a self-sealing end
     */
    public boolean passesWhenLoose() {
        return passesWhenLoose;
    }

    @Override
    public String toString() {
        return words;
    }
}

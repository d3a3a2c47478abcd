package org.satline.program.drawing;

import java.util.Locale;

/** Colours of drawings: dark enough to be told from white and from each other's lightness in print without colour. */
public enum Ink {
    /** Text and first lines. */
    BLACK(0x1a1a1a),
    /** Second lines. */
    BLUE(0x0b3c8c),
    /** Readings and what is computed from them. */
    RUST(0xa33b0b),
    /** Lines that stand back. */
    GREY(0x707070),
    /** Grid. */
    PALE(0xdcdcdc),
    /** Ground. */
    WHITE(0xffffff);

    private final int rgb;

    Ink(int rgb) {
        this.rgb = rgb;
    }

    /**
     * Returns the colour as a number.
     *
     * @return red, green and blue, eight bits each
     */
    public int rgb() {
        return rgb;
    }

    String hex() {
        return String.format(Locale.ROOT, "#%06x", rgb);
    }
}

package org.satline.program.drawing;

/**
 * How wide a text is at most. Widths are those of the sans-serif face of the fourteen standard faces of PDF (ISO 32000-1, 9.6.2.2; its
 * published metrics), enlarged to those of the widest face that usual browsers take for sans-serif.
 */
final class TextWidth {
    /** Thousandths of the size, from the space to the tilde. */
    private static final int[] WIDTHS = {
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556,
        556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667,
        556, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556,
        556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722,
        500, 500, 500, 334, 260, 334, 584
    };

    private static final int OTHER = 667;
    private static final double WIDEST_FACE = 1.17;
    private static final double BOLD = 1.1;

    private TextWidth() {}

    /** In units of the drawing, for one of the standard faces. */
    static double standard(String words, int size) {
        int sum = 0;
        for (int i = 0; i < words.length(); i++) {
            int place = words.charAt(i) - ' ';
            sum += place >= 0 && place < WIDTHS.length ? WIDTHS[place] : OTHER;
        }
        return sum * size / 1000.0;
    }

    static double atMost(String words, int size, Shape.Weight weight) {
        return standard(words, size) * WIDEST_FACE * (weight == Shape.Weight.BOLD ? BOLD : 1);
    }
}

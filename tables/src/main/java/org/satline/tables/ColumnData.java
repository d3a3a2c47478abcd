package org.satline.tables;

/**
 * What a table file holds of one property. The arrays are never written after construction.
 *
 * @param low where the table of this property begins, K or Pa
 * @param split where the body ends and the top begins
 * @param high where the table ends
 * @param end the x at which theta is 0, above {@code high}
 * @param bodyPieces number of body pieces
 * @param topPieces number of top pieces
 * @param body coefficients, piece after piece, lowest power first, of the fraction within the piece
 * @param top the same in theta, from {@code high} towards {@code split}
 */
@SuppressWarnings("ArrayRecordComponent") // package-private, shared with the reader on purpose
record ColumnData(
        double low,
        double split,
        double high,
        double end,
        int bodyPieces,
        int topPieces,
        double[] body,
        double[] top) {}

package org.satline.program.audit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Set;

/** One calculator's answers: the question is a temperature in kelvins or a pressure in pascals, the numbers are in the unit. */
record PlantedFile(
        String mistake,
        Set<String> codes,
        String refrigerant,
        String quantity,
        boolean byTemperature,
        String unit,
        double altitude,
        List<Double> asked,
        List<Double> right,
        List<Double> wrong,
        RoundingMode rounding) {
    boolean pair() {
        return codes.size() > 1;
    }

    /** Rows as they stand in a file, cells as texts: quantity, kelvins, pascals, answer. */
    List<String> answers(int decimals) {
        return wrong.stream()
                .map(value -> new BigDecimal(value).setScale(decimals, rounding).toPlainString())
                .toList();
    }

    /** Whether the mistake shows at all where so many decimals are printed: more than two of the last digit in half of the rows. */
    boolean exceedsTwice(int decimals) {
        double twice = 2 * Math.pow(10, -decimals);
        int larger = 0;
        for (int i = 0; i < wrong.size(); i++) {
            larger += Math.abs(wrong.get(i) - right.get(i)) > twice ? 1 : 0;
        }
        return 2 * larger >= wrong.size();
    }
}

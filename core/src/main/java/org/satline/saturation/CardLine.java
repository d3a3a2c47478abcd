package org.satline.saturation;

import java.util.Arrays;
import org.satline.equilibrium.Range;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Refrigerant;

/** One column of a card: ln p over 1/T, straight between the points. Immutable, thread-safe. */
final class CardLine {
    private final String what;
    private final Refrigerant refrigerant;
    private final double[] kelvins;
    private final double[] pascals;
    private final double[] logs;
    private double largestMissK;
    private int worst;

    CardLine(String what, Refrigerant refrigerant, double[] kelvins, double[] pascals) {
        this.what = what;
        this.refrigerant = refrigerant;
        this.kelvins = kelvins;
        this.pascals = pascals;
        logs = Arrays.stream(pascals).map(Math::log).toArray();
        for (int i = 1; i < kelvins.length; i++) {
            if (!(kelvins[i] > kelvins[i - 1] && pascals[i] > pascals[i - 1])) {
                throw new IllegalArgumentException("card of " + refrigerant.designation() + ": " + what
                        + " pressure does not rise from " + Temperature.ofKelvins(kelvins[i - 1]) + " to "
                        + Temperature.ofKelvins(kelvins[i]) + "; check both rows");
            }
        }
        for (int i = 1; i + 1 < kelvins.length; i++) {
            double share = (logs[i] - logs[i - 1]) / (logs[i + 1] - logs[i - 1]);
            double missed = Math.abs(between(i - 1, i + 1, share) - kelvins[i]);
            if (missed > largestMissK) {
                largestMissK = missed;
                worst = i;
            }
        }
    }

    /** The temperature at a share of the way between two points. */
    private double between(int low, int high, double share) {
        return 1 / (1 / kelvins[low] + share * (1 / kelvins[high] - 1 / kelvins[low]));
    }

    /** How far the neighbours of a point miss it at most, K. */
    double largestMissK() {
        return largestMissK;
    }

    Temperature worst() {
        return Temperature.ofKelvins(kelvins[worst]);
    }

    /** The largest change of temperature that a change of pressure makes anywhere on the line. */
    double kelvinsOf(double changePa) {
        double largest = 0;
        for (int i = 1; i < kelvins.length; i++) {
            // dT/dp = T^2 b / p for ln p = a - 1/(b T)
            double b = (1 / kelvins[i - 1] - 1 / kelvins[i]) / (logs[i] - logs[i - 1]);
            largest = Math.max(largest, kelvins[i] * kelvins[i] * b / pascals[i - 1] * changePa);
        }
        return largest;
    }

    Range temperatures() {
        return new Range(kelvins[0], kelvins[kelvins.length - 1]);
    }

    Range pressures() {
        return new Range(pascals[0], pascals[pascals.length - 1]);
    }

    double pressurePa(double temperatureK) {
        int i = below(kelvins, temperatureK, "temperature", "K");
        if (temperatureK == kelvins[i]) {
            return pascals[i];
        }
        double share = (1 / temperatureK - 1 / kelvins[i]) / (1 / kelvins[i + 1] - 1 / kelvins[i]);
        return Math.exp(logs[i] + share * (logs[i + 1] - logs[i]));
    }

    double temperatureK(double pressurePa) {
        int i = below(pascals, pressurePa, "pressure", "Pa");
        return pressurePa == pascals[i]
                ? kelvins[i]
                : between(i, i + 1, (Math.log(pressurePa) - logs[i]) / (logs[i + 1] - logs[i]));
    }

    private int below(double[] points, double at, String quantity, String unit) {
        if (!(at >= points[0] && at <= points[points.length - 1])) {
            throw OutOfValidityException.of(
                    quantity,
                    at,
                    unit,
                    points[0],
                    points[points.length - 1],
                    "the " + what + " points on the card of " + refrigerant.designation(),
                    "a card answers between its first and its last point only");
        }
        int found = Arrays.binarySearch(points, at);
        return found >= 0 ? found : -found - 2;
    }
}

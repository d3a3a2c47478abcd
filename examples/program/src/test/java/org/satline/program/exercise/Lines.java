package org.satline.program.exercise;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.satline.quantity.Density;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;

/** Where a solver looks up saturation figures: in the engine, or in what the question prints. */
interface Lines {
    Temperature bubbleTemperature(Pressure pressure);

    Temperature dewTemperature(Pressure pressure);

    Pressure bubblePressure(Temperature temperature);

    Pressure dewPressure(Temperature temperature);

    /** Density of the bubble liquid, kg/m3. */
    double liquidDensity(Temperature temperature);

    /** Density of water at 60 degF, kg/m3: 999.0 by tables of the density of water (from memory). */
    default double waterDensity() {
        return 999.0;
    }

    /** The engine that solves the equations of state. */
    static Lines solving(SaturationCurve curve) {
        return new Lines() {
            @Override
            public Temperature bubbleTemperature(Pressure pressure) {
                return curve.bubbleTemperature(pressure);
            }

            @Override
            public Temperature dewTemperature(Pressure pressure) {
                return curve.dewTemperature(pressure);
            }

            @Override
            public Pressure bubblePressure(Temperature temperature) {
                return curve.bubblePressure(temperature);
            }

            @Override
            public Pressure dewPressure(Temperature temperature) {
                return curve.dewPressure(temperature);
            }

            @Override
            public double liquidDensity(Temperature temperature) {
                return curve.bubbleLiquidDensity(temperature.kelvins());
            }
        };
    }

    /** What the question prints: rows of its tables, with a straight line between them, and its densities. */
    static Lines printed(PrintedExercise it) {
        return new PrintedLines(it);
    }

    /** Lookups as a student does them. */
    final class PrintedLines implements Lines {
        private static final Pattern DENSITY = Pattern.compile("liquid density at ([-0-9.]+ deg[CF]).*");

        private final PrintedExercise it;
        private final boolean us;

        private PrintedLines(PrintedExercise it) {
            this.it = it;
            us = it.body().contains("| temperature, degF |");
        }

        /** The slope at a reading is taken over 0.1 % to either side, which may just leave the rows: their line is then drawn on. */
        private double look(double x, boolean byPressure, boolean dew) {
            return look(x, byPressure, dew, 0)
                    .orElseGet(() -> look(x, byPressure, dew, 0.001)
                            .orElseThrow(
                                    () -> new AssertionError(it.title() + ": no table holds " + x + "; " + it.body())));
        }

        private Optional<Double> look(double x, boolean byPressure, boolean dew, double beyond) {
            for (List<double[]> rows : it.tables()) {
                for (int i = 0; i + 1 < rows.size(); i++) {
                    double[] first = rows.get(i);
                    double[] second = rows.get(i + 1);
                    int column = dew ? first.length - 1 : 1;
                    int from = byPressure ? column : 0;
                    int to = byPressure ? 0 : column;
                    double slack = beyond * Math.abs(x);
                    if (x >= first[from] - slack && x <= second[from] + slack) {
                        return Optional.of(first[to]
                                + (x - first[from]) / (second[from] - first[from]) * (second[to] - first[to]));
                    }
                }
            }
            return Optional.empty();
        }

        private Temperature temperature(Pressure pressure, boolean dew) {
            return us
                    ? Temperature.ofFahrenheit(look(pressure.psia(), true, dew))
                    : Temperature.ofCelsius(look(pressure.kilopascals(), true, dew));
        }

        private Pressure pressure(Temperature temperature, boolean dew) {
            return us
                    ? Pressure.ofPsia(look(temperature.fahrenheit(), false, dew))
                    : Pressure.ofKilopascals(look(temperature.celsius(), false, dew));
        }

        @Override
        public Temperature bubbleTemperature(Pressure pressure) {
            return temperature(pressure, false);
        }

        @Override
        public Temperature dewTemperature(Pressure pressure) {
            return temperature(pressure, true);
        }

        @Override
        public Pressure bubblePressure(Temperature temperature) {
            return pressure(temperature, false);
        }

        @Override
        public Pressure dewPressure(Temperature temperature) {
            return pressure(temperature, true);
        }

        @Override
        public double waterDensity() {
            return Density.parse(it.rule("density of water at 60 degF, ([0-9.]+ (?:lb/ft3|kg/m3))\\."))
                    .kilogramsPerCubicMetre();
        }

        @Override
        public double liquidDensity(Temperature temperature) {
            for (Map.Entry<String, String> given : it.givens().entrySet()) {
                Matcher name = DENSITY.matcher(given.getKey());
                if (name.matches()
                        && Math.abs(Temperature.parse(name.group(1)).kelvins() - temperature.kelvins()) < 1e-6) {
                    return Density.parse(given.getValue()).kilogramsPerCubicMetre();
                }
            }
            throw new AssertionError(it.title() + " states no liquid density at " + temperature);
        }
    }
}

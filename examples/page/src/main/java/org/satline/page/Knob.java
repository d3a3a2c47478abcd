package org.satline.page;

import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.wording.NumberPrinter;

/** What can be set on the simulated unit. Limits lie within those of the simulation; they are our choice, no source. */
enum Knob {
    /** Refrigerant in the unit, % of the rated charge. */
    CHARGE(60, 140, 100, 1),
    /** Air entering the condenser, degC; 35 degC is the rating point. */
    OUTDOOR(20, 46, 35, 1),
    /** Airflow over the evaporator, % of the rated one. */
    AIRFLOW(30, 100, 100, 5),
    /** Airflow through the condenser, % of the rated one: it falls as the coil gets dirty. */
    CONDENSER(30, 100, 100, 5),
    /** Extra pressure drop of the liquid line at rated flow, kPa. */
    RESTRICTION(0, 1500, 0, 50),
    /** Share of the pumped gas that leaks back through the valves of the compressor, %. */
    LEAKAGE(0, 50, 0, 5),
    /** Partial pressure of foreign gas in the running condenser, kPa. */
    FOREIGN_GAS(0, 500, 0, 25);

    final int least;
    final int most;
    final int usual;
    final int step;

    Knob(int least, int most, int usual, int step) {
        this.least = least;
        this.most = most;
        this.usual = usual;
        this.step = step;
    }

    String key() {
        return "knob." + PageTexts.word(this);
    }

    /** A setting with its units. */
    String printed(double value, NumberPrinter numbers) {
        return switch (this) {
            case CHARGE, AIRFLOW, CONDENSER, LEAKAGE -> numbers.percent(value / 100);
            case OUTDOOR -> numbers.print(Temperature.ofCelsius(value));
            case RESTRICTION, FOREIGN_GAS -> numbers.print(PressureDifference.ofKilopascals(value));
        };
    }
}

package org.satline.simulation;

import java.util.Locale;
import org.satline.charge.margin.MeteringDevice;
import org.satline.quantity.Parts;
import org.satline.quantity.Power;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Refrigerant;

/**
 * What a simulated air conditioner is built for: its state at the rating point of {@link AirConditions#rated()}. From it
 * {@link SimulatedSystem} sizes compressor, coils, metering device and charge. Immutable, thread-safe.
 *
 * @param refrigerant refrigerant
 * @param metering expansion valve or fixed orifice
 * @param capacity cooling of the refrigerant; [1, 200] kW
 * @param superheat superheat at the evaporator outlet; [2, 12] K
 * @param subcooling subcooling at the condenser outlet; [2, 12] K
 * @param evaporating dew point in the evaporator; [0, 15] degC
 * @param condensingApproach bubble point in the condenser above the outdoor air; [subcooling + 1 K, 22 K]
 * @param isentropicEfficiency of the compressor; [0.4, 0.85]
 * @param coilVolumes size of the coils and lines
 */
public record SystemDesign(
        Refrigerant refrigerant,
        MeteringDevice metering,
        Power capacity,
        TemperatureDifference superheat,
        TemperatureDifference subcooling,
        Temperature evaporating,
        TemperatureDifference condensingApproach,
        double isentropicEfficiency,
        CoilVolumes coilVolumes) {
    /** {@inheritDoc} */
    public SystemDesign {
        Parts.required("refrigerant metering capacity superheat", refrigerant, metering, capacity, superheat);
        Parts.required("subcooling evaporating", subcooling, evaporating);
        Parts.required("condensingApproach coilVolumes", condensingApproach, coilVolumes);
        Parts.numbers("isentropicEfficiency", isentropicEfficiency);
        within("capacity", capacity.watts() / 1000, 1, 200, "kW");
        within("rated superheat", superheat.kelvins(), 2, 12, "K");
        within("rated subcooling", subcooling.kelvins(), 2, 12, "K");
        within("rated evaporating temperature", evaporating.celsius(), 0, 15, "degC");
        within("condensing approach", condensingApproach.kelvins(), subcooling.kelvins() + 1, 22, "K");
        within("isentropic efficiency", isentropicEfficiency, 0.4, 0.85, "");
    }

    /**
     * Inner volumes for each kilowatt of cooling.
     *
     * @param condenser condenser tubes, L/kW; ]0, 5]
     * @param evaporator evaporator tubes, L/kW; ]0, 5]
     * @param liquidLine liquid line, L/kW; [0, 5]
     * @param vapourSide suction and discharge line and compressor shell, L/kW; [0, 5]
     */
    public record CoilVolumes(double condenser, double evaporator, double liquidLine, double vapourSide) {
        /** {@inheritDoc} */
        public CoilVolumes {
            within("condenser volume", condenser, 0.01, 5, "L/kW");
            within("evaporator volume", evaporator, 0.01, 5, "L/kW");
            within("liquid line volume", liquidLine, 0, 5, "L/kW");
            within("vapour side volume", vapourSide, 0, 5, "L/kW");
        }

        /**
         * Returns volumes of the order of a split system with 7 m of line; our choice, no source.
         *
         * @return 0.35, 0.30, 0.05 and 0.60 L/kW
         */
        public static CoilVolumes typical() {
            return typical(Assumptions.standard());
        }

        static CoilVolumes typical(Assumptions assumed) {
            return new CoilVolumes(
                    assumed.value("design condenser volume"),
                    assumed.value("design evaporator volume"),
                    assumed.value("design liquid line volume"),
                    assumed.value("design vapour side volume"));
        }
    }

    /**
     * Returns a usual residential system: superheat and subcooling 5.6 K (10 degF), evaporating at 8 degC, condensing 13 K over the outdoor
     * air, isentropic efficiency 0.68; common practice, no source.
     *
     * @param refrigerant refrigerant
     * @param metering expansion valve or fixed orifice
     * @param capacity cooling of the refrigerant
     * @return the design
     */
    public static SystemDesign typical(Refrigerant refrigerant, MeteringDevice metering, Power capacity) {
        return typical(refrigerant, metering, capacity, Assumptions.standard());
    }

    static SystemDesign typical(Refrigerant refrigerant, MeteringDevice metering, Power capacity, Assumptions assumed) {
        Parts.required("capacity", capacity);
        return new SystemDesign(
                refrigerant,
                metering,
                capacity,
                TemperatureDifference.ofFahrenheitDegrees(assumed.value("design superheat")),
                TemperatureDifference.ofFahrenheitDegrees(assumed.value("design subcooling")),
                Temperature.ofCelsius(assumed.value("design evaporating")),
                TemperatureDifference.ofKelvins(assumed.value("design condensing approach")),
                assumed.value("design isentropic efficiency"),
                CoilVolumes.typical(assumed));
    }

    private static void within(String what, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%s is %s %s, allowed [%s, %s] %s for a simulated system; choose a design within",
                    what,
                    value,
                    unit,
                    low,
                    high,
                    unit));
        }
    }
}

package org.satline.simulation;

import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.quantity.Parts;
import org.satline.quantity.Power;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;

/**
 * What a simulated system settles to. Immutable, thread-safe.
 *
 * @param suctionPressure absolute pressure at evaporator and suction port
 * @param liquidPressure absolute pressure at condenser and liquid port, foreign gas included
 * @param suctionLine suction-line temperature
 * @param liquidLine liquid-line temperature, before any restriction
 * @param dischargeLine discharge temperature
 * @param superheat above the dew point at the suction pressure; 0 for a pure refrigerant that leaves the evaporator wet, below 0 for a wet
 *     blend
 * @param subcooling below the bubble point at the liquid pressure; not above 0 where vapour leaves the condenser
 * @param supplyDryBulb supply air, dry bulb, behind evaporator and blower
 * @param condenserAirLeaving air leaving the condenser
 * @param cooling heat taken up by the refrigerant
 * @param compressorPower power that reaches the refrigerant
 * @param massFlowKilogramsPerSecond refrigerant flow, kg/s
 * @param suctionVapourFraction vapour mass fraction at the suction; 1 for dry
 * @param opening how far the metering device is open; 1 for wide open and for an orifice
 */
public record SteadyState(
        Pressure suctionPressure,
        Pressure liquidPressure,
        Temperature suctionLine,
        Temperature liquidLine,
        Temperature dischargeLine,
        TemperatureDifference superheat,
        TemperatureDifference subcooling,
        Temperature supplyDryBulb,
        Temperature condenserAirLeaving,
        Power cooling,
        Power compressorPower,
        double massFlowKilogramsPerSecond,
        double suctionVapourFraction,
        double opening) {
    /** {@inheritDoc} */
    public SteadyState {
        Parts.required("suctionPressure liquidPressure suctionLine", suctionPressure, liquidPressure, suctionLine);
        Parts.required("liquidLine dischargeLine superheat", liquidLine, dischargeLine, superheat);
        Parts.required("subcooling supplyDryBulb condenserAirLeaving", subcooling, supplyDryBulb, condenserAirLeaving);
        Parts.required("cooling compressorPower", cooling, compressorPower);
        if (!(massFlowKilogramsPerSecond > 0
                && suctionVapourFraction >= 0
                && suctionVapourFraction <= 1
                && opening >= 0
                && opening <= 1)) {
            throw new IllegalArgumentException("mass flow " + massFlowKilogramsPerSecond
                    + " kg/s must be above 0, vapour fraction " + suctionVapourFraction + " and opening " + opening
                    + " must lie in [0, 1]");
        }
    }

    /**
     * Returns what perfect instruments would read.
     *
     * @param air air at both coils, as it was simulated
     * @return readings without uncertainty
     */
    public SystemReadings exactReadings(AirConditions air) {
        return SystemReadings.builder()
                .suction(Reading.exact(suctionPressure), Reading.exact(suctionLine))
                .liquid(Reading.exact(liquidPressure), Reading.exact(liquidLine))
                .put(Place.DISCHARGE_LINE, Reading.exact(dischargeLine))
                .put(Place.RETURN_DRY_BULB, Reading.exact(air.returnDryBulb()))
                .put(Place.RETURN_WET_BULB, Reading.exact(air.returnWetBulb()))
                .put(Place.SUPPLY_DRY_BULB, Reading.exact(supplyDryBulb))
                .put(Place.OUTDOOR_AIR, Reading.exact(air.outdoor()))
                .put(Place.OUTDOOR_AIR_LEAVING, Reading.exact(condenserAirLeaving))
                .build();
    }
}

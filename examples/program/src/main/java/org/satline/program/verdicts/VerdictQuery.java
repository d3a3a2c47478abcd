package org.satline.program.verdicts;

import java.util.Optional;
import java.util.OptionalDouble;
import org.satline.quantity.Parts;

/**
 * One row of a bulk evaluation in SI doubles, as files hold it: absolute pressures in Pa, temperatures and differences in K; what was not
 * read is empty. Nothing but null is refused here: {@link BulkVerdicts} answers a bad row with a note. Immutable, thread-safe.
 *
 * @param id name of the row
 * @param refrigerant designation
 * @param metering {@code expansion-valve} or {@code fixed-orifice}
 * @param suctionPressurePa absolute pressure at the suction port, Pa
 * @param suctionLineK suction-line temperature, K
 * @param liquidPressurePa absolute pressure at the liquid port, Pa
 * @param liquidLineK liquid-line temperature, K
 * @param returnWetBulbK wet bulb of the return air, K
 * @param condenserAirK air entering the condenser, K
 * @param targetSuperheatK maker's target superheat, K
 * @param targetSubcoolingK maker's target subcooling, K
 * @param pressureStandardUncertaintyPa standard uncertainty of each pressure, Pa
 * @param temperatureStandardUncertaintyK standard uncertainty of each temperature, K
 * @param toleranceK half-width of the band, K; empty for the published one
 * @param returnDryBulbK dry bulb of the return air, K
 * @param supplyDryBulbK dry bulb of the supply air, K
 * @param dischargeLineK discharge-line temperature, K
 * @param outdoorMinimumMet whether outdoor air is warm enough for the method
 */
public record VerdictQuery(
        String id,
        String refrigerant,
        String metering,
        OptionalDouble suctionPressurePa,
        OptionalDouble suctionLineK,
        OptionalDouble liquidPressurePa,
        OptionalDouble liquidLineK,
        OptionalDouble returnWetBulbK,
        OptionalDouble condenserAirK,
        OptionalDouble targetSuperheatK,
        OptionalDouble targetSubcoolingK,
        OptionalDouble pressureStandardUncertaintyPa,
        OptionalDouble temperatureStandardUncertaintyK,
        OptionalDouble toleranceK,
        OptionalDouble returnDryBulbK,
        OptionalDouble supplyDryBulbK,
        OptionalDouble dischargeLineK,
        Optional<Boolean> outdoorMinimumMet) {
    /** {@inheritDoc} */
    public VerdictQuery {
        Parts.required("id refrigerant metering suctionPressurePa", id, refrigerant, metering, suctionPressurePa);
        Parts.required("suctionLineK liquidPressurePa liquidLineK", suctionLineK, liquidPressurePa, liquidLineK);
        Parts.required("returnWetBulbK condenserAirK", returnWetBulbK, condenserAirK);
        Parts.required("targetSuperheatK targetSubcoolingK", targetSuperheatK, targetSubcoolingK);
        Parts.required("pressureStandardUncertaintyPa", pressureStandardUncertaintyPa);
        Parts.required("temperatureStandardUncertaintyK toleranceK", temperatureStandardUncertaintyK, toleranceK);
        Parts.required("returnDryBulbK supplyDryBulbK dischargeLineK", returnDryBulbK, supplyDryBulbK, dischargeLineK);
        Parts.required("outdoorMinimumMet", outdoorMinimumMet);
    }
}

package org.satline.program.mapped;

/**
 * What a machine shows once it has settled, at its ports.
 *
 * @param suctionPa absolute pressure at the suction port, Pa
 * @param suctionLineK suction line, K
 * @param liquidPa absolute pressure at the liquid port, Pa
 * @param liquidLineK liquid line, K
 * @param dischargeK discharge line, K
 * @param supplyK supply air behind coil and blower, K
 * @param superheatK by suction port, K; 0 or below where liquid returns
 * @param subcoolingK by liquid port, K; 0 or below where vapour leaves the condenser
 */
public record Running(
        double suctionPa,
        double suctionLineK,
        double liquidPa,
        double liquidLineK,
        double dischargeK,
        double supplyK,
        double superheatK,
        double subcoolingK) {}

package org.satline.program.mapped;

import java.util.Random;

/**
 * How one machine is built: rating point and constants, drawn anew for each. All ranges are our choice, of the order
 * of residential split systems.
 *
 * @param valve thermostatic valve, else a capillary
 * @param capacityW cooling, W
 * @param evaporatingC dew point in the evaporator, degC
 * @param approachK bubble point in the condenser over its air, K
 * @param superheatK at the evaporator outlet, K
 * @param subcoolingK at the condenser outlet, K
 * @param carnot share of the Carnot efficiency that the compressor reaches
 * @param mapSuction change of the mass flow for each kelvin of evaporating temperature
 * @param mapDischarge change of the mass flow for each kelvin of condensing temperature
 * @param powerDischarge change of the power for each kelvin of condensing temperature
 * @param kept share of the power that stays in the gas
 * @param flooded share of the condenser that holds liquid at the rating point
 * @param condenserNtu transfer units of the condenser
 * @param dried share of the evaporator that holds vapour at the rating point
 * @param bypass share of the return air that passes the evaporator untouched
 * @param sensible share of the cooling that is sensible at the rating point
 * @param setting superheat at which the valve begins to open, share of the rated one
 * @param span superheat from there to wide open, share of the rated one
 * @param power exponent of the condensing pressure in the flow of the capillary
 * @param perKelvin change of the capillary's flow for each kelvin of subcooling
 * @param choke how much vapour at its inlet holds the flow back
 * @param slip velocity of vapour over that of liquid
 * @param condenserL inner volume, L/kW
 * @param evaporatorL inner volume, L/kW
 * @param liquidL liquid line, L/kW
 * @param vapourL vapour side with what the oil holds, L/kW
 * @param suctionDrop pressure lost to the suction port, share
 * @param liquidDrop pressure lost to the liquid port, share
 * @param suctionGainK warming up to the suction port, K
 * @param liquidLossK cooling up to the liquid port, K
 * @param blowerK warming of the supply air by the blower, K
 */
record Build(
        boolean valve,
        double capacityW,
        double evaporatingC,
        double approachK,
        double superheatK,
        double subcoolingK,
        double carnot,
        double mapSuction,
        double mapDischarge,
        double powerDischarge,
        double kept,
        double flooded,
        double condenserNtu,
        double dried,
        double bypass,
        double sensible,
        double setting,
        double span,
        double power,
        double perKelvin,
        double choke,
        double slip,
        double condenserL,
        double evaporatorL,
        double liquidL,
        double vapourL,
        double suctionDrop,
        double liquidDrop,
        double suctionGainK,
        double liquidLossK,
        double blowerK) {

    static Build drawn(Random random) {
        Draw draw = new Draw(random);
        double subcooling = draw.between(3.5, 8);
        return new Build(
                random.nextBoolean(),
                1000 * draw.between(5, 18),
                draw.between(4, 10.5),
                subcooling + draw.between(3.5, 9),
                draw.between(4, 9),
                subcooling,
                draw.between(0.45, 0.62),
                draw.between(0.031, 0.038),
                -draw.between(0.002, 0.007),
                draw.between(0.014, 0.022),
                draw.between(0.85, 0.98),
                draw.between(0.09, 0.24),
                draw.between(1.0, 2.2),
                draw.between(0.12, 0.28),
                draw.between(0.08, 0.22),
                draw.between(0.68, 0.8),
                draw.between(0.45, 0.7),
                draw.between(0.6, 1.1),
                draw.between(0.6, 0.9),
                draw.between(0.01, 0.025),
                draw.between(3, 7),
                draw.between(1.80, 3.50),
                draw.between(0.2, 0.5),
                draw.between(0.2, 0.45),
                draw.between(0.03, 0.15),
                draw.between(0.5, 1.4),
                draw.between(0.003, 0.02),
                draw.between(0, 0.012),
                draw.between(0.2, 1.5),
                draw.between(0, 1),
                draw.between(0.4, 1.2));
    }

    private record Draw(Random random) {
        double between(double low, double high) {
            return low + (high - low) * random.nextDouble();
        }
    }
}

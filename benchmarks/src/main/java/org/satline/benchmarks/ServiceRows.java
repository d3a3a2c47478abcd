package org.satline.benchmarks;

import java.util.SplittableRandom;
import org.satline.charge.ChargeRow;
import org.satline.charge.margin.MeteringDevice;
import org.satline.measurement.Place;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** Rows of plausible readings with a fixed seed: both metering devices, charges low, right and high. */
final class ServiceRows {
    final SaturationCurve curve;
    final double[] suctionPa = new double[Inputs.COUNT];
    final double[] suctionLineK = new double[Inputs.COUNT];
    final ChargeRow[] rows = new ChargeRow[Inputs.COUNT];

    ServiceRows(String designation) {
        Refrigerant refrigerant = Catalogue.standard().find(designation);
        curve = SaturationCurves.of(refrigerant);
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < rows.length; i++) {
            suctionPa[i] = curve.dewPressurePa(random.nextDouble(277, 284));
            double liquidPa = curve.bubblePressurePa(random.nextDouble(312, 320));
            suctionLineK[i] = curve.dewTemperatureK(suctionPa[i]) + random.nextDouble(4, 12);
            boolean valve = random.nextBoolean();
            ChargeRow.Builder row = ChargeRow.of(
                            refrigerant, valve ? MeteringDevice.EXPANSION_VALVE : MeteringDevice.FIXED_ORIFICE)
                    .suction(suctionPa[i], suctionLineK[i])
                    .liquid(liquidPa, curve.bubbleTemperatureK(liquidPa) - random.nextDouble(2, 9))
                    .read(Place.RETURN_DRY_BULB, random.nextDouble(296, 300))
                    .read(Place.RETURN_WET_BULB, random.nextDouble(290, 293))
                    .read(Place.OUTDOOR_AIR, random.nextDouble(299, 306))
                    .uncertainty(3000, 0.3);
            // a valve has the maker's target, an orifice the chart
            rows[i] = (valve ? row.target(5.6) : row).build();
        }
    }
}

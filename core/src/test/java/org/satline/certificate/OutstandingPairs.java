package org.satline.certificate;

import java.util.List;

/** What is to be said of the pairs that stand out in the comparison with measured equilibria; the figures are those of the table above it. */
final class OutstandingPairs {
    private OutstandingPairs() {}

    static List<String> discussion() {
        return List.of(
                "",
                "### Pairs that stand out",
                "",
                "Beyond 3 % rms in bubble pressure:",
                "",
                "- **Refused**: ammonia, water or nitrogen with fluorocarbons or hydrocarbons. Their liquids do not mix over most of the range, and no parameters are"
                        + " published that we know of (R-601 + R-728 apart, made for natural gas).",
                "- **Default rule between very unlike molecules**: R-1234yf + R-14, R-1234yf + R-218 and, beyond the computed line, R-728 + R-764 (12 to 63 %). No parameters"
                        + " are published that we know of. In no listed blend; a blend of the caller's own that holds one is warned of.",
                "- **Default rule**: R-1150 + R-22 (3.2 %). In no listed blend.",
                "- **R-13I1 + R-744** (default rule, 20 %): the parameter adjusted to these points leaves 5 % and stays out of the default model.",
                "- **R-134a + R-32** (fitted, 3.4 %): one of its two measured sets (doi:10.1016/j.fluid.2006.09.017) is off by 3.7 % in pressure and 0.04 in vapour"
                        + " composition, the other agrees within 0.3 %. The set is doubtful, not the pair: R-407C meets a pseudo-pure equation within 0.5 %.",
                "- **R-32 + R-600a** (fitted, 7.1 %, 260 to 322 K): the published automatic fit misses this strongly non-ideal pair. R-439A and R-467A hold it in"
                        + " small shares and agree with their published points within 0.5 K; in the stated uncertainty it counts with its 7.1 %.",
                "- **R-170 + R-23** (fitted, 4.3 %, 174 to 229 K): a strongly non-ideal pair with an azeotrope, one paper. In no listed blend.",
                "- **R-50 + R-600, R-50 + R-601, R-728 + R-744** (fitted, 3 to 18 %, 2 to 7 points): published fits made with other pure equations"
                        + " (Kunz and Wagner 2012) for natural gas, measured up to 16 MPa; where a state is counted as beyond, it lies above the computed end of the bubble"
                        + " line. In no listed blend.",
                "- **R-600a + R-744** (fitted, 3.0 %, 300 to 330 K, 0.8 to 7 MPa): likewise made with other pure equations. In no listed blend.",
                "- **R-1234yf + R-23** (adjusted, worst point 6.9 %): single points at low temperature scatter by up to 10 %.");
    }
}

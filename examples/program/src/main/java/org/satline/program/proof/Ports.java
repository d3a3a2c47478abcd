package org.satline.program.proof;

import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;

/** What stands at the ports of a machine, exactly; pressures absolute. */
record Ports(
        Pressure suction,
        Temperature suctionLine,
        Pressure liquid,
        Temperature liquidLine,
        Temperature dischargeLine,
        Temperature supply) {}

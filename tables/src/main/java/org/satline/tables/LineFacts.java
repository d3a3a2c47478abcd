package org.satline.tables;

import org.satline.equilibrium.BoundaryEnd;
import org.satline.equilibrium.Range;

/** Where a bubble or dew line of the equation begins and ends; the table covers most of it. */
record LineFacts(Range temperatures, Range pressures, BoundaryEnd end) {}

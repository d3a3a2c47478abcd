/**
 * A watch over a fleet of units as a job on Apache Flink: readings in, verdicts, slow leaks and alarms out. Read {@link
 * org.satline.fleet.FleetJob} first. Distribution, state, time and recovery are the engine's; what a reading means is
 * asked of the library.
 */
@NullMarked
package org.satline.fleet;

import org.jspecify.annotations.NullMarked;

/**
 * Cautions that go with every result that can hurt someone, by safety group, substance, task and pressure, each with its basis. They do not
 * replace the local code and licensed practice. Read {@link org.satline.safety.Cautions} first.
 *
 * <p>Stable from the first release on.
 */
@NullMarked
package org.satline.safety;

import org.jspecify.annotations.NullMarked;

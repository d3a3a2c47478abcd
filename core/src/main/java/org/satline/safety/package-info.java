/**
 * Cautions that go with every result that can hurt someone. They do not replace the local code and licensed practice. Read {@link
 * org.satline.safety.Caution} first.
 */
@NullMarked
package org.satline.safety;

import org.jspecify.annotations.NullMarked;

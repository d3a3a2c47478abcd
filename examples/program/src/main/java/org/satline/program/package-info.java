/**
 * The runnable jar: the command line. Read {@link org.satline.program.Main} first.
 */
@NullMarked
package org.satline.program;

import org.jspecify.annotations.NullMarked;

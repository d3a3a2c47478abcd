/**
 * The runnable jar: command line, page layout and small programs to start from. Read {@link org.satline.examples.Main} first.
 */
@NullMarked
package org.satline.examples;

import org.jspecify.annotations.NullMarked;

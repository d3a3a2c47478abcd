/** The runnable jar: command line, page layout and small programs to start from. */
@NullMarked
package org.satline.examples;

import org.jspecify.annotations.NullMarked;

/** What stands in for classes of the platform that the library of the compiler lacks or has in another form. */
@NullMarked
package org.teavm.classlib.java.lang;

import org.jspecify.annotations.NullMarked;

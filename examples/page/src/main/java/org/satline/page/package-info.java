/** The tool in one page of a browser: the library compiled to JavaScript, and its screens. Runs in the one thread of a page. */
@NullMarked
package org.satline.page;

import org.jspecify.annotations.NullMarked;

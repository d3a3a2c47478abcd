/** Builds the page. */
@NullMarked
package org.satline.page.build;

import org.jspecify.annotations.NullMarked;

/**
 * Pictures for print and screen, each a small class that asks the library and hands back a {@link
 * org.satline.program.pictures.Picture}. Lines differ by dash, marker and label, not by colour alone. Read {@link
 * org.satline.program.pictures.PressureTemperaturePicture} first.
 */
@NullMarked
package org.satline.program.pictures;

import org.jspecify.annotations.NullMarked;

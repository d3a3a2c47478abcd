/**
 * The results of the library as JSON and back, exact to the last bit. Read {@link org.satline.json.SatlineJson} first.
 *
 * <p>Every public record, enumeration and sealed interface of core has a form, and so has what they are made of:
 *
 * <ul>
 *   <li>a quantity is {@code {"value": 280.0, "unit": "K"}}, always in the SI unit of its kind, since a conversion may lose the last bit;
 *   <li>a record is an object with its components by name; an empty optional is left out; nothing else may be missing and nothing unknown
 *   may stand there;
 *   <li>a record of a sealed interface says which it is: {@code "type": "Judged"}; enumerations are their names;
 *   <li>a listed refrigerant is its designation, a blend of the caller's own is its name with its components;
 *   <li>a fill rule is its name; a saturation curve, which computes, is its refrigerant, and reading makes it anew. What is named is
 *       looked up in the library that reads: keep its version beside what you keep for years.
 * </ul>
 *
 * <p>The schema, JSON Schema draft 2020-12, lies in the jar beside this package: {@link org.satline.json.SatlineJson#schema()}. The public
 * records of satline-tables have forms too; they are not in it.
 *
 * <p>It needs Jackson databind, which core does not bring along; {@link org.satline.json.MissingLibraryException} says so where it is
 * missing.
 *
 * <p>This package alone uses reflection, within its own module and without access to anything private; it needs no opened package. It asks
 * for constructors, accessors and the names of parameters only, which Android knows from API level 26 on; a shrinker must keep records,
 * their constructors with the attribute {@code MethodParameters}, their accessors, their fields and the names of {@code org.satline}.
 * Everything else in core works without reflection.
 *
 * <p>Stable from the first release on.
 */
@NullMarked
package org.satline.json;

import org.jspecify.annotations.NullMarked;

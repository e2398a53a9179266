/**
 * Access through a sound-hole: what passes it and at what turn, how a cleat on the jaw of a clamp finds its way under a crack,
 * where a clamp reaches, how cleats lie, and when all this speaks for opening the top instead. Shapes are plane outlines in
 * millimetres; where an outline comes from, and how any of this is drawn, is decided elsewhere.
 */
@NullMarked
package afterlength.craft.access;

import org.jspecify.annotations.NullMarked;

/**
 * PDF and print. A {@link afterlength.workshop.paper.Drawing} is a picture in millimetres that a pen puts on a screen
 * (SVG) or, at exactly 1:1, on a sheet to cut out (PDF); a {@link afterlength.workshop.paper.PaperDocument} is running
 * text that becomes pages. What is drawn or written is decided by the stages; here lives only how it reaches paper.
 * Nothing in this room opens a file of the shop or a network connection.
 */
@NullMarked
package afterlength.workshop.paper;

import org.jspecify.annotations.NullMarked;

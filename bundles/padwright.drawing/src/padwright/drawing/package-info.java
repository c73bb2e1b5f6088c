/** Diagrams as scenes: one drawing code for screen, SVG and PDF, with hit areas. */
package padwright.drawing;

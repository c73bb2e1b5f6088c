/** Turns a plan into engine problems, and engine results into findings and text edits. */
package padwright.workup;

/** Answers that are asked for again. */
package padwright.workup.remember;

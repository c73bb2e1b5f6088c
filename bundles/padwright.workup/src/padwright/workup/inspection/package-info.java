/** What was found at an instrument and its keys, and the work that follows from it, none of which takes metal off. */
package padwright.workup.inspection;

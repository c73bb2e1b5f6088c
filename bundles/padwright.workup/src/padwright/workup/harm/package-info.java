/** What leaking pads do to the notes of an instrument, and how far notes therefore tell which pad leaks. */
package padwright.workup.harm;

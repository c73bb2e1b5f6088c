/** Which pads suit an instrument, its keys and its player, with the reasons for and against each. */
package padwright.workup.choose;

/**
 * Notes by name, MIDI number and frequency.
 *
 * <pre>{@code
 * NoteName.parse("Bb3").midi();                     // 58
 * NoteName.parse("D4").frequency();                 // 293.66 Hz
 * NoteName.nearest(555).toString();                 // "C♯5"
 * }</pre>
 */
package padwright.engine.pitch;

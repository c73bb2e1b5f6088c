package padwright.views.regulate;

/**
 * A coupling to be regulated, in the words of the user.
 *
 * @param id names the coupling, as in a plan: {@code F > Fs}
 * @param driver the key that is pressed
 * @param pair both keys as the trade calls them
 * @param adjuster what sets it
 * @param found the light that the plan notes; empty where it notes none
 * @param turn what to do about it
 * @param upset the light that the pieces and shims of the plan are predicted to leave; empty for none
 */
public record RegulationRow(String id, String driver, String pair, String adjuster, String found, String turn,
		String upset) {
}

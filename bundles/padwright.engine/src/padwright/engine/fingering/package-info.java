/**
 * From pressed keys to closed pads.
 *
 * <pre>{@code
 * Coupling pair = new Coupling("F", "Fs", Adjuster.cork(List.of()));
 * CouplingGraph keys = new CouplingGraph(List.of("Fs", "F", "Ds"), List.of(pair));
 * KeyAction action = new KeyAction(
 *         Map.of("Fs", RestPosture.OPEN, "F", RestPosture.OPEN, "Ds", RestPosture.CLOSED), keys);
 * action.closedPads(Set.of("F", "Ds"));                                  // [Fs, F]
 * }</pre>
 */
package padwright.engine.fingering;

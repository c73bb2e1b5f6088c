/**
 * Linked keys: which key closes which, in what order to regulate them, how far to turn a screw or which film to add,
 * and what a new stack under one pad upsets elsewhere.
 *
 * <pre>{@code
 * Adjuster screw = Adjuster.screw(ScrewThread.of("UNM 1.0"));
 * Coupling pair = new Coupling("F", "Fs", screw, new BigDecimal("2"));
 * CouplingGraph keys = new CouplingGraph(List.of("F", "Fs"), List.of(pair));
 * keys.orderOfWork();                                                    // [Fs, F]
 * new Regulation(pair, Regulation.Side.DRIVEN, Length.thou("5")).adjustment(); // a ScrewTurn of 91°, 3 hours of a clock
 * keys.upset("Fs", Length.thou("0.5"));                                  // F stays open by 0.5 thou at F
 * }</pre>
 */
package padwright.engine.coupling;

/**
 * From notes that speak badly or well to the pads that may leak, and to the note to try next.
 *
 * <pre>{@code
 * NoteFingering e = new NoteFingering("E4", Set.of("G", "Fs", "F", "E"));
 * NoteFingering g = new NoteFingering("G4", Set.of("G"));
 * NoteFingering f = new NoteFingering("F4", Set.of("G", "Fs", "F"));
 * Diagnosis found = Diagnosis.of(new TrialNotes(List.of(e), List.of(g)), PadWeights.EVEN);
 * found.suspects();                                 // {E}, {F}, {Fs}, a third of the probability each
 * found.nextNote(List.of(e, f, g));                 // F4: bad in two of three cases
 * }</pre>
 */
package padwright.engine.diagnosis;

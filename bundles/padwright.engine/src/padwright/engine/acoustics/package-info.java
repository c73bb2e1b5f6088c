/**
 * What an air column does to sound: at which frequencies a fingering resonates, how strongly, what a leak takes away,
 * and which way every dimension moves a pitch. A model of plane waves (transmission matrices) with the losses at the
 * wall, without a player: differences between two states of one instrument are worth more than absolute pitches.
 *
 * <pre>{@code
 * Layout layout = new Layout(bore, Optional.of(mouth), holes);
 * SoundModel model = SoundModel.in(AirModel.damp(0.9, 0.025).at(26));
 * Instrument flute = new Instrument(layout, model);
 * TargetNote note = new TargetNote("G4", 392, Fingering.closing(List.of("C", "Bb", "A", "G")));
 * flute.sound(note).cents();                                              // from where the note should be
 * flute.centsPerMetre(note.fingering(), 391.2);                           // by every dimension
 * LeakHarm.of(flute, List.of(note), Map.of("A", Cover.Leaking.of(gap)));  // cents and dB
 * LayoutFit.of(layout, model, notes, Map.of(dimension, limits));          // brought in tune
 * }</pre>
 *
 * <p>Sizes are metres here, since this is no sum that is judged; a {@link padwright.engine.length.Length} of a document
 * comes in by the {@code of} methods. Complex numbers and derivatives are those of the library Hipparchus.
 *
 * <p>What it was held to: two measured tubes, a cylinder and one with four holes (Ernoult, Chabassier, Rodriguez and
 * Humeau, Acta Acustica 5 (2021) 47), whose maxima it meets within 9 cents and whose minima within 14; published tables
 * and formulas for air, losses, radiation, holes and pads; impedances that the open-source library openwind holds
 * itself to, most within 3e-8, all within 2e-5; and whole flutes computed by another implementation. No concert flute
 * measured in numbers was found, no table of what lips do to an embouchure hole, and no measured leak: of these it says
 * what the formulas say. What a player does, the bend of a mouth hole's walls, undercut holes, and holes that hear each
 * other outside are not in it.
 */
package padwright.engine.acoustics;

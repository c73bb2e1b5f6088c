/**
 * How much air passes under the pads, so that a shop's leak tester can confirm it: per key and over the instrument, in
 * mL/min and as the diameter of a round hole. A model of a thin slit: the tester decides.
 *
 * <pre>{@code
 * Tester tester = new Tester(1000, Air.at(20));                          // Pa
 * LikelyPad pad = new LikelyPad("Fs", Length.millimetres("7.5"), Length.millimetres("0.8"), List.of(profile));
 * InstrumentLeak leak = InstrumentLeak.of(List.of(pad), tester);
 * leak.ranked().get(0).flow().expected();                           // mL/min
 * leak.equivalentHole();
 * }</pre>
 */
package padwright.engine.leak;

package padwright.engine.leak;

import padwright.engine.length.Length;

/**
 * What one key leaks.
 *
 * @param key name of the key
 * @param millilitresPerMinute at the tester's pressure
 * @param equivalentHole diameter of the round hole that would leak as much; see {@link Tester#equivalentHole}
 */
public record KeyLeak(String key, double millilitresPerMinute, Length equivalentHole) {

	static KeyLeak of(SeatedPad pad, Tester tester) {
		double flow = pad.millilitresPerMinute(tester);
		return new KeyLeak(pad.key(), flow, tester.equivalentHole(flow));
	}
}

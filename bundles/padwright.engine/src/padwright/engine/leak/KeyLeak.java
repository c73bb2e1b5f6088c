package padwright.engine.leak;

import padwright.engine.length.Length;

/**
 * What one key leaks.
 *
 * @param key name of the key
 * @param flow in mL/min at the tester's pressure
 * @param equivalentHole diameter of the round hole that would leak as much as is expected; see
 *        {@link Tester#equivalentHole}
 */
public record KeyLeak(String key, LikelyFlow flow, Length equivalentHole) {

	static KeyLeak of(String key, double[] flows, Tester tester) {
		LikelyFlow flow = LikelyFlow.of(flows);
		return new KeyLeak(key, flow, tester.equivalentHole(flow.expected()));
	}
}

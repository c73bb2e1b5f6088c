package padwright.engine.leak;

import java.util.Comparator;
import java.util.List;

import padwright.engine.length.Length;

/**
 * What a whole instrument leaks with every key closed: the keys leak side by side, so their flows add.
 *
 * @param tester how it is measured
 * @param ranked every key, the worst first, equals as given
 */
public record InstrumentLeak(Tester tester, List<KeyLeak> ranked) {

	public InstrumentLeak {
		ranked = List.copyOf(ranked);
	}

	/** The leak of these pads. */
	public static InstrumentLeak of(List<SeatedPad> pads, Tester tester) {
		Comparator<KeyLeak> worstFirst = Comparator.comparingDouble(KeyLeak::millilitresPerMinute).reversed();
		return new InstrumentLeak(tester,
				pads.stream().map(pad -> KeyLeak.of(pad, tester)).sorted(worstFirst).toList());
	}

	/** All keys together, in mL/min. */
	public double millilitresPerMinute() {
		return ranked.stream().mapToDouble(KeyLeak::millilitresPerMinute).reduce(0, Double::sum);
	}

	/** The one round hole that would leak as much as all keys together. */
	public Length equivalentHole() {
		return tester.equivalentHole(millilitresPerMinute());
	}
}

package padwright.engine.leak;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

import padwright.engine.length.Length;

/**
 * What a whole instrument leaks with every key closed: the keys leak side by side, so their flows add.
 *
 * @param tester how it is measured
 * @param ranked every key, the worst by expectation first, equals as given
 * @param all all keys together
 */
public record InstrumentLeak(Tester tester, List<KeyLeak> ranked, LikelyFlow all) {

	public InstrumentLeak {
		ranked = List.copyOf(ranked);
	}

	/** The leak of these pads, none of which tells anything of another; none leak nothing. */
	public static InstrumentLeak of(List<LikelyPad> pads, Tester tester) {
		List<KeyLeak> leaks = new ArrayList<>();
		int count = pads.stream().mapToInt(pad -> pad.gaps().size()).max().orElse(1);
		double[] sums = new double[count];
		for (LikelyPad pad : pads) {
			double[] flows = pad.flows(tester);
			leaks.add(KeyLeak.of(pad.key(), flows, tester));
			Arrays.setAll(sums, index -> sums[index] + flows[index % flows.length]);
		}
		leaks.sort(Comparator.comparingDouble((KeyLeak leak) -> leak.flow().expected()).reversed());
		return new InstrumentLeak(tester, leaks, LikelyFlow.of(sums));
	}

	/** The one round hole that would leak as much as is expected of all keys together. */
	public Length equivalentHole() {
		return tester.equivalentHole(all.expected());
	}
}

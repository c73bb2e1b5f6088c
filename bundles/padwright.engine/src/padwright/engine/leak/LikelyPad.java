package padwright.engine.leak;

import java.util.List;

import padwright.engine.rim.RimProfile;
import padwright.engine.length.Length;

/**
 * A pad on its rim with the key closed, whose gap is not known, but what it may be.
 *
 * @param key name of the key
 * @param rimRadius middle of the rim, from the centre of the hole, more than 0
 * @param rimWidth how far the air has to go between pad and rim, more than 0
 * @param gaps possible ones, each as likely as any other, at least one
 */
public record LikelyPad(String key, Length rimRadius, Length rimWidth, List<RimProfile> gaps) {

	/** @throws IllegalArgumentException if there is no gap */
	public LikelyPad {
		gaps = List.copyOf(gaps);
		if (gaps.isEmpty()) {
			throw new IllegalArgumentException("no gap is possible under " + key);
		}
	}

	/** What each of the gaps leaks at a tester's pressure, in mL/min. */
	double[] flows(Tester tester) {
		return gaps.stream().map(gap -> new SeatedPad(key, rimRadius, rimWidth, gap))
				.mapToDouble(pad -> pad.millilitresPerMinute(tester)).toArray();
	}
}

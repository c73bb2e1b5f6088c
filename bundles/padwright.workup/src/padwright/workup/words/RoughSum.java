package padwright.workup.words;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

import padwright.engine.length.Length;

/**
 * A sum as it is shown, no finer than its parts are known: of its terms, those that lose most by being rounded are rounded
 * the other way, so that what is shown adds up.
 *
 * @param terms signed, rounded as {@link LengthWords#rough} does or to the figure next to it
 * @param sum   what they sum to, which is the exact sum rounded
 */
public record RoughSum(List<Length> terms, Length sum) {

	/** @param exact one term or more, signed */
	public static RoughSum of(List<Length> exact) {
		Length sum = LengthWords.roughly(exact.stream().reduce(Length.ZERO, Length::plus));
		Length[] terms = exact.stream().map(LengthWords::roughly).toArray(Length[]::new);
		Length off = Arrays.stream(terms).reduce(sum, Length::minus);
		long step = LengthWords.roughStep().nanometres();
		int way = off.signum();
		IntStream.range(0, terms.length).boxed()
				.sorted(Comparator.comparingLong(term -> way * (terms[term].nanometres() - exact.get(term).nanometres())))
				.limit(Math.abs(off.nanometres()) / step)
				.forEach(term -> terms[term] = terms[term].plus(new Length(way * step)));
		return new RoughSum(List.of(terms), sum);
	}
}

package padwright.paper.page;

import java.util.List;
import java.util.stream.Collectors;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.paper.words.Messages;
import padwright.workup.words.Texts;

/** Lengths as they are printed, in thou to two decimals, without the unit. */
public final class Thou {

	private Thou() {
	}

	public static String of(Length length) {
		return Texts.decimal(length.in(LengthUnit.THOU, 2).toPlainString()).replace('-', '\u2212');
	}

	/** With a sign, unless it is nothing. */
	public static String signed(Length length) {
		return (length.signum() > 0 ? "+" : "") + of(length);
	}

	/** {@code 7.5 + 5 + 2 = 14.5}; a lone shim needs no sum. */
	public static String sum(List<Length> lengths, Length sum) {
		if (lengths.isEmpty()) {
			return Messages.of("none");
		}
		String terms = lengths.stream().map(Thou::of).collect(Collectors.joining(" + "));
		return lengths.size() == 1 ? terms : terms + " = " + of(sum);
	}
}

package padwright.views.clock;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import padwright.engine.length.Length;
import padwright.views.Figures;
import padwright.workup.solve.LeafReading;
import padwright.workup.words.LengthWords;

/**
 * A reading as it was typed, by hand or by an indicator, in the unit that is shown.
 *
 * @param reading what the leaves said
 * @param asTyped whether it says what was typed; if not, it is the thickest leaf of the stock that is not thicker
 * @param isBeyond whether more was typed than the thickest leaf of the stock, which no feeler can have told
 */
public record TypedReading(LeafReading reading, boolean asTyped, boolean isBeyond) {

	private static final Set<String> DRAGS = Set.of(".", ",");
	private static final String DRAGS_LIGHTLY = "-";

	/**
	 * What was typed: a number with a point or comma, a point alone where the finest leaf drags, or a dash where it does lightly.
	 *
	 * @param leaves of the stock; where there are none, every thickness is a leaf
	 * @return nothing for what is no number, or cannot be a length
	 */
	public static Optional<TypedReading> of(String typed, List<Length> leaves) {
		if (typed.equals(DRAGS_LIGHTLY)) {
			return Optional.of(new TypedReading(LeafReading.DRAGS_LIGHTLY, true, false));
		}
		return DRAGS.contains(typed) ? Optional.of(new TypedReading(LeafReading.DRAGS, true, false))
				: Figures.read(typed).or(() -> rounded(typed)).map(gap -> of(gap, leaves));
	}

	/** An indicator may type more decimals than a length has; no leaf is told by them. */
	private static Optional<Length> rounded(String typed) {
		try {
			return Figures.read(new BigDecimal(typed.replace(',', '.'))
					.setScale(LengthWords.decimals(), RoundingMode.DOWN).toPlainString());
		} catch (NumberFormatException noNumber) {
			return Optional.empty();
		}
	}

	private static TypedReading of(Length gap, List<Length> leaves) {
		Optional<Length> leaf = leaves.isEmpty() ? Optional.of(gap).filter(length -> length.signum() > 0)
				: leaves.stream().filter(each -> !each.isLongerThan(gap)).max(Comparator.naturalOrder());
		return new TypedReading(leaf.map(LeafReading::slides).orElse(LeafReading.DRAGS), leaf.orElse(Length.ZERO).equals(gap),
				leaves.stream().max(Comparator.naturalOrder()).filter(gap::isLongerThan).isPresent());
	}
}

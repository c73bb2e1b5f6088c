package padwright.views.clock;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

import padwright.engine.length.Length;
import padwright.views.Shown;
import padwright.workup.solve.LeafReading;
import padwright.workup.words.LengthWords;

/**
 * Readings that one stroke says, the same wherever readings are typed. A point or comma is a leaf that drags, a dash one
 * that drags lightly, a digit the leaf that slides. A leaf of a whole number has that digit, one of tenths its tenths; the
 * others have the digits that are left, the finest first. Nought has no leaf: it begins a figure that Enter ends, and so
 * does a digit without a leaf.
 *
 * @param leaves by their digit
 * @param graded whether a dash is a reading
 */
public record ReadingKeys(Map<Character, Length> leaves, boolean graded) {

	/** The finest leaf drags at every hour that is still to be read. */
	public static final char ALL_DRAG = '*';

	private static final String DIGITS = "123456789";

	public ReadingKeys {
		leaves = Map.copyOf(leaves);
	}

	/** The strokes for the leaves of a stock, in the unit that is shown; no digits where the user types figures in full. */
	public static ReadingKeys of(List<Length> leaves, boolean graded) {
		Map<Character, Length> keys = new TreeMap<>();
		if (!Shown.isTypedInFull()) {
			for (Function<Length, String> rule : List.<Function<Length, String>>of(ReadingKeys::whole, ReadingKeys::tenths,
					leaf -> left(keys))) {
				leaves.stream().filter(leaf -> !keys.containsValue(leaf))
						.forEach(leaf -> digit(rule.apply(leaf)).ifPresent(key -> keys.putIfAbsent(key, leaf)));
			}
		}
		return new ReadingKeys(keys, graded);
	}

	private static Optional<Character> digit(String text) {
		return text.length() == 1 && DIGITS.contains(text) ? Optional.of(text.charAt(0)) : Optional.empty();
	}

	private static String whole(Length leaf) {
		return leaf.in(Shown.unit(), LengthWords.decimals()).stripTrailingZeros().toPlainString();
	}

	private static String tenths(Length leaf) {
		String figure = whole(leaf);
		return figure.startsWith("0.") ? figure.substring(2) : "";
	}

	private static String left(Map<Character, Length> keys) {
		return DIGITS.chars().filter(digit -> !keys.containsKey((char) digit)).mapToObj(Character::toString).findFirst()
				.orElse("");
	}

	/** What a stroke says by itself; nothing where it begins a figure, or says nothing. */
	public Optional<LeafReading> reading(char stroke) {
		if (Shown.isTypedInFull()) {
			return Optional.empty();
		}
		return switch (stroke) {
		case '.', ',' -> Optional.of(LeafReading.DRAGS);
		case ReadingEntry.LIGHT_DRAG -> graded ? Optional.of(LeafReading.DRAGS_LIGHTLY) : Optional.empty();
		default -> Optional.ofNullable(leaves.get(stroke)).map(LeafReading::slides);
		};
	}

	/** The digits that have a leaf, the finest leaf first. */
	public List<Character> digits() {
		return leaves.entrySet().stream().sorted(Map.Entry.comparingByValue()).map(Map.Entry::getKey).toList();
	}
}

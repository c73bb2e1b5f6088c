package padwright.language.messages;

import java.util.Optional;
import java.util.Set;

/** How what was never read is written rightly. */
public final class Wording {

	/** What a name follows. */
	private static final Set<String> BEFORE_NAMES = Set.of("system", "stock", "plan", "key", "touch", "hole", "joint",
			"rod", "pad", "film", "feeler", "adhesive", "backing", "for", "by", "closes", "opens", "holds", "over",
			"carries", "change", "remove", "regulate");

	private Wording() {
	}

	/** A word of the language as a name, if it stands where a name does. */
	public static Optional<String> asName(String before, String word) {
		return BEFORE_NAMES.contains(before) && word.chars().allMatch(Character::isLetter) && !word.isEmpty()
				? Optional.of('"' + word + '"') : Optional.empty();
	}
}

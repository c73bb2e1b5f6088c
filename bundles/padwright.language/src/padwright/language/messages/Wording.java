package padwright.language.messages;

import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** How what is no longer read, or was never, is written rightly. */
public final class Wording {

	/** Words of earlier versions of the language. */
	private static final Map<String, String> FORMER = Map.of("extends", "based on", "french", "perforated");

	/** What a name follows. */
	private static final Set<String> BEFORE_NAMES = Set.of("system", "stock", "plan", "key", "touch", "hole", "joint",
			"rod", "pad", "film", "feeler", "adhesive", "for", "by", "closes", "opens", "holds", "over", "carries",
			"change", "remove", "regulate");

	private Wording() {
	}

	/** What a word of an earlier version has become. */
	public static Optional<String> ofFormer(String word) {
		return Optional.ofNullable(FORMER.get(word));
	}

	/** A word of the language as a name, if it stands where a name does. */
	public static Optional<String> asName(String before, String word) {
		return BEFORE_NAMES.contains(before) && word.chars().allMatch(Character::isLetter) && !word.isEmpty()
				? Optional.of('"' + word + '"') : Optional.empty();
	}
}

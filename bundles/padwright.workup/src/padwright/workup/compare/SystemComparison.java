package padwright.workup.compare;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;

import padwright.model.keysystem.KeySystem;
import padwright.workup.report.Figures;
import padwright.workup.words.Messages;

/**
 * Two key systems with all that they inherit, part by part.
 *
 * @param parts that both have, in the order of the new one, such as {@code key F}
 * @param onlyThen parts that only the old one has
 * @param onlyNow parts that only the new one has
 */
public record SystemComparison(KeySystem then, KeySystem now, List<KeyComparison> parts, List<String> onlyThen,
		List<String> onlyNow) {

	private static final String UNIT = " mm";
	/** Of a millimetre, as {@link SystemFacts} writes it. */
	private static final int DECIMALS = 3;
	private static final Pattern LENGTH = Pattern.compile("[0-9]+([.,][0-9]+)?" + UNIT);

	public SystemComparison {
		parts = List.copyOf(parts);
		onlyThen = List.copyOf(onlyThen);
		onlyNow = List.copyOf(onlyNow);
	}

	/** Parts of one kind and name are compared. */
	public static SystemComparison of(KeySystem then, KeySystem now) {
		SystemFacts earlier = SystemFacts.of(then);
		SystemFacts later = SystemFacts.of(now);
		List<KeyComparison> parts = new ArrayList<>();
		later.parts().forEach((part, facts) -> {
			if (earlier.parts().containsKey(part)) {
				parts.add(new KeyComparison(part, later.label(part), changes(earlier.parts().get(part), facts)));
			}
		});
		return new SystemComparison(then, now, parts, missing(earlier, later), missing(later, earlier));
	}

	private static List<String> missing(SystemFacts here, SystemFacts there) {
		return here.parts().keySet().stream().filter(part -> !there.parts().containsKey(part)).map(here::label).toList();
	}

	private static List<Change> changes(Map<String, String> then, Map<String, String> now) {
		Set<String> aspects = new LinkedHashSet<>(then.keySet());
		aspects.addAll(now.keySet());
		return aspects.stream().filter(aspect -> !then.getOrDefault(aspect, "").equals(now.getOrDefault(aspect, "")))
				.map(aspect -> change(aspect, then.get(aspect), now.get(aspect))).toList();
	}

	private static Change change(String aspect, String then, String now) {
		String notSaid = Messages.of("compare.notSaid");
		return new Change(aspect, Objects.requireNonNullElse(then, notSaid), Objects.requireNonNullElse(now, notSaid),
				difference(then, now));
	}

	/** As in {@code +0.6 mm} between two lengths; else nothing. */
	private static String difference(String then, String now) {
		if (then == null || now == null || !LENGTH.matcher(then).matches() || !LENGTH.matcher(now).matches()) {
			return "";
		}
		BigDecimal difference = number(now).subtract(number(then));
		return Figures.signed(difference, DECIMALS) + UNIT;
	}

	private static BigDecimal number(String length) {
		return new BigDecimal(length.substring(0, length.length() - UNIT.length()).replace(',', '.'));
	}
}

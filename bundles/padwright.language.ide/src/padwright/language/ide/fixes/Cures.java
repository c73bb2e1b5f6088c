package padwright.language.ide.fixes;

import java.util.List;
import java.util.Map;

import padwright.workup.checks.IssueCodes;

/** Which findings have a cure that text can bring. */
public final class Cures {

	private static final Map<String, Cure> BY_CODE = Map.ofEntries(
			Map.entry(IssueCodes.SYNTAX, SyntaxCures::of),
			Map.entry(IssueCodes.LINK, NameCures::nearest),
			Map.entry(IssueCodes.RULE_PROPERTY_UNKNOWN, NameCures::nearest),
			Map.entry(IssueCodes.RULE_VALUE, NameCures::nearest),
			Map.entry(IssueCodes.RULE_OPERATOR, NameCures::operator),
			Map.entry(IssueCodes.HAZARD_UNKNOWN, NameCures::hazard),
			Map.entry(IssueCodes.RANGE_EMPTY, NameCures::range),
			Map.entry(IssueCodes.HOUR_TWICE, NameCures::remove),
			Map.entry(IssueCodes.NOT_COUPLED, NameCures::coupled),
			Map.entry(IssueCodes.DUPLICATE_KEY, NameCures::inherited),
			Map.entry(IssueCodes.TOUCH_AMBIGUOUS, NameCures::touched),
			Map.entry(IssueCodes.UNIT_SUSPECT, LengthCures::unit),
			Map.entry(IssueCodes.TOO_FINE, LengthCures::round),
			Map.entry(IssueCodes.FILM_NOT_STOCKED, LengthCures::film),
			Map.entry(IssueCodes.READING_UNKNOWN_LEAF, LengthCures::leaf),
			Map.entry(IssueCodes.STACK_HEIGHT, LengthCures::stack),
			Map.entry(IssueCodes.DUPLICATE_SERVICE, RowCures::merge),
			Map.entry(IssueCodes.DRIVEN_KEY_MISSING, RowCures::remove),
			Map.entry(IssueCodes.PAD_DIAMETER, RowCures::otherPads),
			Map.entry(IssueCodes.PAD_SHORT, RowCures::otherPads),
			Map.entry(IssueCodes.STABILISER_MISSING, RowCures::stabilisers));

	private Cures() {
	}

	/** The fixes for a finding of a code, the best first. */
	public static List<Fix> of(String code, Site site) {
		return BY_CODE.getOrDefault(code, none -> List.of()).fixes(site);
	}
}

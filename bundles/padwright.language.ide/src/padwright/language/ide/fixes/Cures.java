package padwright.language.ide.fixes;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import padwright.workup.checks.IssueCodes;

/** Which findings have a cure that text can bring. */
public final class Cures {

	private static final Map<String, FixProvider> BY_CODE = Map.ofEntries(
			Map.entry(IssueCodes.LINK, WordCures::named),
			Map.entry(IssueCodes.SYNTAX, Cures::syntax),
			Map.entry(IssueCodes.RULE_PROPERTY_UNKNOWN, NameCures::nearest),
			Map.entry(IssueCodes.RULE_VALUE, NameCures::nearest),
			Map.entry(IssueCodes.RULE_OPERATOR, NameCures::operator),
			Map.entry(IssueCodes.HAZARD_UNKNOWN, NameCures::hazard),
			Map.entry(IssueCodes.RANGE_EMPTY, NameCures::range),
			Map.entry(IssueCodes.HOUR_TWICE, NameCures::remove),
			Map.entry(IssueCodes.NOT_COUPLED, NameCures::coupled),
			Map.entry(IssueCodes.DUPLICATE_KEY, NameCures::inherited),
			Map.entry(IssueCodes.UNIT_SUSPECT, LengthCures::unit),
			Map.entry(IssueCodes.TOO_FINE, LengthCures::round),
			Map.entry(IssueCodes.FILM_NOT_STOCKED, LengthCures::film),
			Map.entry(IssueCodes.READING_UNKNOWN_LEAF, LengthCures::leaf),
			Map.entry(IssueCodes.STACK_HEIGHT, LengthCures::stack),
			Map.entry(IssueCodes.DASH_NOT_GRADED, RoundCures::grade),
			Map.entry(IssueCodes.OUT_NOT_IN_PLACE, RoundCures::takeOut),
			Map.entry(IssueCodes.DUPLICATE_SERVICE, RowCures::merge),
			Map.entry(IssueCodes.DRIVEN_KEY_MISSING, RowCures::remove),
			Map.entry(IssueCodes.PAD_DIAMETER, RowCures::otherPads),
			Map.entry(IssueCodes.PAD_SHORT, RowCures::otherPads),
			Map.entry(IssueCodes.BACKING_MISSING, RowCures::backings));

	private Cures() {
	}

	/** A word that was written otherwise once, or a statement that is not as it should be. */
	private static List<Fix> syntax(Site site) {
		return Stream.concat(WordCures.written(site).stream(), SyntaxCures.of(site).stream()).toList();
	}

	/** The fixes for a finding of a code, the best first. */
	public static List<Fix> of(String code, Site site) {
		return BY_CODE.getOrDefault(code, none -> List.of()).fixes(site);
	}
}

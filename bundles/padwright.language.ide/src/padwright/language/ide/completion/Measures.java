package padwright.language.ide.completion;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.eclipse.xtext.Assignment;
import org.eclipse.xtext.RuleCall;

import padwright.engine.length.LengthUnit;
import padwright.language.ide.words.TradeWords;

/** A number that is being typed as a length, with the units that may stand behind it. */
final class Measures {

	private static final Set<String> RULES = Set.of("Measure", "SignedMeasure");
	private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]+([.][0-9]+)?");

	private Measures() {
	}

	/** Whether a length goes into the place. */
	static boolean isOne(Assignment place) {
		return place.getTerminal() instanceof RuleCall call && RULES.contains(call.getRule().getName());
	}

	/** As in {@code 6 mm}; nothing where no whole number was typed. */
	static List<Offer> withUnits(String typed) {
		return !NUMBER.matcher(typed).matches() ? List.of()
				: Stream.of(LengthUnit.values()).map(LengthUnit::symbol)
						.map(unit -> Offer.of(typed + " " + unit, TradeWords.meaning(unit).orElse(null))).toList();
	}
}

package padwright.language.ide.completion;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;

import org.eclipse.xtext.Assignment;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.ide.editor.contentassist.ContentAssistContext;

import padwright.engine.coupling.ScrewThread;
import padwright.engine.length.LengthUnit;
import padwright.language.ide.words.Messages;
import padwright.language.ide.words.TradeWords;

/** What is offered where the grammar expects a value, by rule and feature. Names to be invented are not. */
final class Offers {

	private static final Map<String, Function<ContentAssistContext, List<Offer>>> BY_PLACE = Map.ofEntries(
			Map.entry("ThicknessRow.values", PlanOffers::stackedFilms),
			Map.entry("Piece.thickness", PlanOffers::placedFilms),
			Map.entry("Round.removed", PlanOffers::piecesInPlace),
			Map.entry("Piece.from", PlanOffers::hours),
			Map.entry("Piece.to", PlanOffers::hours),
			Map.entry("Plan.hours", PlanOffers::unreadHours),
			Map.entry("Round.hours", PlanOffers::unreadHours),
			Map.entry("Round.readings", PlanOffers::readings),
			Map.entry("Comparison.property", StockOffers::properties),
			Map.entry("Value.name", StockOffers::values),
			Map.entry("Value.unit", StockOffers::units),
			Map.entry("Material.hazards", StockOffers::hazards),
			Map.entry("Adhesive.hazards", StockOffers::hazards),
			Map.entry("Adjuster.thread", Offers::threads),
			Map.entry("ThicknessRow.unit", Offers::lengthUnits),
			Map.entry("Round.unit", Offers::lengthUnits),
			Map.entry("Assortment.unit", Offers::lengthUnits),
			Map.entry("Plan.bedUnit", Offers::lengthUnits),
			Map.entry("Document.unit", Offers::lengthUnits));

	private Offers() {
	}

	static List<Offer> at(Assignment place, ContentAssistContext context) {
		String name = GrammarUtil.containingRule(place).getName() + "." + place.getFeature();
		return BY_PLACE.getOrDefault(name, none -> List.of()).apply(context);
	}

	private static List<Offer> lengthUnits(ContentAssistContext context) {
		return Stream.of(LengthUnit.values()).map(LengthUnit::symbol)
				.map(unit -> Offer.of(unit, TradeWords.meaning(unit).orElse(null))).toList();
	}

	private static List<Offer> threads(ContentAssistContext context) {
		return Stream.of(ScrewThread.unm(), ScrewThread.ba()).flatMap(List::stream)
				.map(thread -> Offer.of("\"" + thread.designation() + "\"",
						Messages.of("offer.pitch", thread.pitch().in(LengthUnit.MILLIMETRE, 3).toPlainString())))
				.toList();
	}
}

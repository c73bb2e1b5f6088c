package padwright.language.ide.completion;

import java.util.Collection;
import java.util.List;
import java.util.Set;

import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.ide.editor.contentassist.ContentAssistContext;

import padwright.language.ide.facts.Hazards;
import padwright.language.ide.words.Messages;
import padwright.model.stock.Adhesive;
import padwright.model.stock.Comparison;
import padwright.model.stock.Material;
import padwright.model.stock.Stock;
import padwright.workup.cautions.HazardStatements;
import padwright.workup.rules.RuleVocabulary;

/** The words that can stand in a stock's rules and hazards. */
final class StockOffers {

	private StockOffers() {
	}

	/** What a rule can ask about. */
	static List<Offer> properties(ContentAssistContext context) {
		return RuleVocabulary.properties().stream().map(name -> Offer.of(name, kind(name))).toList();
	}

	private static String kind(String property) {
		if (!RuleVocabulary.isQuantity(property)) {
			return Messages.of("offer.name");
		}
		List<String> units = RuleVocabulary.units(property);
		return units.isEmpty() ? Messages.of("offer.number") : Messages.of("offer.units", String.join(", ", units));
	}

	/** The names that the property of the comparison at hand can have. */
	static List<Offer> values(ContentAssistContext context) {
		Stock stock = EcoreUtil2.getContainerOfType(context.getCurrentModel(), Stock.class);
		Comparison comparison = comparison(context);
		return stock == null || comparison == null || comparison.getProperty() == null ? List.of()
				: RuleVocabulary.values(comparison.getProperty(), stock).stream()
						.map(name -> Offer.of(name, comparison.getProperty())).toList();
	}

	/** The units in which the property of the comparison at hand is measured. */
	static List<Offer> units(ContentAssistContext context) {
		Comparison comparison = comparison(context);
		return comparison == null || comparison.getProperty() == null ? List.of()
				: RuleVocabulary.units(comparison.getProperty()).stream().map(unit -> Offer.of(unit, null)).toList();
	}

	/** While a value is typed anew the model at hand may be the rule around: then its last comparison is meant. */
	private static Comparison comparison(ContentAssistContext context) {
		Comparison around = EcoreUtil2.getContainerOfType(context.getCurrentModel(), Comparison.class);
		if (around != null) {
			return around;
		}
		List<Comparison> all = EcoreUtil2.getAllContentsOfType(context.getCurrentModel(), Comparison.class);
		return all.isEmpty() ? null : all.get(all.size() - 1);
	}

	/** The hazard codes whose wording is known, without those that are said already. */
	static List<Offer> hazards(ContentAssistContext context) {
		Collection<String> said = context.getCurrentModel() instanceof Material material ? material.getHazards()
				: context.getCurrentModel() instanceof Adhesive adhesive ? adhesive.getHazards() : Set.of();
		return HazardStatements.codes().stream().filter(code -> !said.contains(code))
				.map(code -> new Offer(code, HazardStatements.wording(code).orElse(null), Hazards.worded(code)))
				.toList();
	}
}

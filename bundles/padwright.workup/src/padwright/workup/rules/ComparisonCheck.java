package padwright.workup.rules;

import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;

import padwright.model.stock.Comparison;
import padwright.model.stock.NameValue;
import padwright.model.stock.NumberValue;
import padwright.model.stock.Operator;
import padwright.model.stock.Stock;
import padwright.model.stock.StockPackage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.words.Phrase;
import padwright.workup.words.NearestName;

/** A rule compares a property that exists with a value that the property can have. */
public final class ComparisonCheck extends Check<Comparison> {

	public ComparisonCheck() {
		super(Comparison.class);
	}

	@Override
	protected void check(Comparison comparison, Findings findings) {
		String name = comparison.getProperty();
		if (name == null || comparison.getValue() == null) {
			return;
		}
		Optional<RuleProperty> property = RuleProperties.byName(name);
		if (property.isEmpty()) {
			unknownProperty(comparison, findings);
		} else if (property.get().type().isNamed()) {
			checkNamed(comparison, property.get(), findings);
		} else {
			checkQuantity(comparison, property.get(), findings);
		}
	}

	private static void unknownProperty(Comparison comparison, Findings findings) {
		List<String> names = RuleProperties.all().stream().map(RuleProperty::name).toList();
		String nearest = NearestName.among(names, comparison.getProperty());
		findings.error(IssueCodes.RULE_PROPERTY_UNKNOWN,
				Place.of(comparison, StockPackage.Literals.COMPARISON__PROPERTY),
				Advice.of(IssueCodes.RULE_PROPERTY_UNKNOWN, comparison.getProperty(), String.join(", ", names),
						nearest),
				nearest);
	}

	private static void checkNamed(Comparison comparison, RuleProperty property, Findings findings) {
		if (comparison.getOperator() != Operator.IS && comparison.getOperator() != Operator.IS_NOT) {
			findings.error(IssueCodes.RULE_OPERATOR, Place.of(comparison, StockPackage.Literals.COMPARISON__OPERATOR),
					Advice.of(IssueCodes.RULE_OPERATOR, property.name()));
		} else if (comparison.getValue() instanceof NameValue value) {
			checkName(comparison, value, property, findings);
		} else {
			wrongValue(comparison, Advice.of("rule-value.notName", comparison.getProperty()), findings);
		}
	}

	private static void checkName(Comparison comparison, NameValue value, RuleProperty property, Findings findings) {
		Collection<String> possible = possible(comparison, property);
		if (!possible.isEmpty() && value.getName() != null && !possible.contains(value.getName())) {
			String nearest = NearestName.among(possible, value.getName());
			findings.error(IssueCodes.RULE_VALUE, Place.of(value, StockPackage.Literals.NAME_VALUE__NAME),
					Advice.of("rule-value.never", property.name(), value.getName(), String.join(", ", possible),
							nearest),
					nearest);
		}
	}

	private static Collection<String> possible(EObject comparison, RuleProperty property) {
		for (EObject owner = comparison; owner != null; owner = owner.eContainer()) {
			if (owner instanceof Stock stock) {
				return RuleVocabulary.own(property.name(), stock).stream().filter(Objects::nonNull).toList();
			}
		}
		return property.names();
	}

	private static void checkQuantity(Comparison comparison, RuleProperty property, Findings findings) {
		if (!(comparison.getValue() instanceof NumberValue value) || !property.type().takesUnit(value.getUnit())) {
			wrongValue(comparison, notQuantity(comparison.getProperty(), property.type().units()), findings);
		}
	}

	private static Advice notQuantity(String property, List<String> units) {
		return units.isEmpty() ? Advice.of("rule-value.notBare", property)
				: Advice.of("rule-value.notQuantity", property,
						units.stream().map(Phrase::plain).reduce((some, more) -> Phrase.of("words.or", some, more)).orElseThrow());
	}

	private static void wrongValue(Comparison comparison, Advice advice, Findings findings) {
		findings.error(IssueCodes.RULE_VALUE, Place.of(comparison, StockPackage.Literals.COMPARISON__VALUE), advice);
	}
}

package padwright.workup.rules;

import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;

import padwright.model.keysystem.Titled;
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
				new Advice("Rules know nothing called " + comparison.getProperty(),
						"they can ask for " + String.join(", ", names), "Did you mean " + nearest + "?"),
				nearest);
	}

	private static void checkNamed(Comparison comparison, RuleProperty property, Findings findings) {
		if (comparison.getOperator() != Operator.IS && comparison.getOperator() != Operator.IS_NOT) {
			findings.error(IssueCodes.RULE_OPERATOR, Place.of(comparison, StockPackage.Literals.COMPARISON__OPERATOR),
					new Advice(property.name() + " cannot be compared by size", "it is a name, not a quantity",
							"Write " + property.name() + " is … or isnt …"));
		} else if (comparison.getValue() instanceof NameValue value) {
			checkName(comparison, value, property, findings);
		} else {
			wrongValue(comparison, "it is a name, not a number", "Write a name", findings);
		}
	}

	private static void checkName(Comparison comparison, NameValue value, RuleProperty property, Findings findings) {
		Collection<String> possible = property.type() == PropertyType.MATERIAL ? materials(comparison)
				: property.names();
		if (!possible.isEmpty() && value.getName() != null && !possible.contains(value.getName())) {
			String nearest = NearestName.among(possible, value.getName());
			findings.error(IssueCodes.RULE_VALUE, Place.of(value, StockPackage.Literals.NAME_VALUE__NAME),
					new Advice(property.name() + " is never " + value.getName(),
							"it is one of " + String.join(", ", possible), "Did you mean " + nearest + "?"),
					nearest);
		}
	}

	private static List<String> materials(EObject element) {
		for (EObject owner = element; owner != null; owner = owner.eContainer()) {
			if (owner instanceof Stock stock) {
				return stock.getMaterials().stream().map(Titled::getName).filter(Objects::nonNull).toList();
			}
		}
		return List.of();
	}

	private static void checkQuantity(Comparison comparison, RuleProperty property, Findings findings) {
		List<String> units = property.type().units();
		String form = units.isEmpty() ? "a bare number" : "a number of " + String.join(" or ", units);
		if (!(comparison.getValue() instanceof NumberValue value) || !property.type().takesUnit(value.getUnit())) {
			wrongValue(comparison, "it is " + form, "Write " + form, findings);
		}
	}

	private static void wrongValue(Comparison comparison, String why, String cure, Findings findings) {
		findings.error(IssueCodes.RULE_VALUE, Place.of(comparison, StockPackage.Literals.COMPARISON__VALUE),
				new Advice(comparison.getProperty() + " cannot be compared with this", why, cure));
	}
}

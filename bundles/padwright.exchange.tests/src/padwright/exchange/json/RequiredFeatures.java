package padwright.exchange.json;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.xtext.AbstractElement;
import org.eclipse.xtext.Action;
import org.eclipse.xtext.Alternatives;
import org.eclipse.xtext.Assignment;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.Grammar;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.Group;
import org.eclipse.xtext.ParserRule;

/** The features without which the grammar has no words for a thing. */
final class RequiredFeatures {

	private static final String FLAG = "?=";

	private final Map<EClassifier, Set<String>> byType = new HashMap<>();

	RequiredFeatures(Grammar grammar) {
		for (ParserRule rule : GrammarUtil.allParserRules(grammar)) {
			List<Group> actions = EcoreUtil2.eAllOfType(rule, Group.class).stream()
					.filter(group -> action(group) != null).toList();
			actions.forEach(group -> add(action(group).getType().getClassifier(), said(group)));
			if (actions.isEmpty() && rule.getType().getClassifier() instanceof EClass) {
				add(rule.getType().getClassifier(), said(rule.getAlternatives()));
			}
		}
	}

	Set<String> of(EClass type) {
		return byType.getOrDefault(type, Set.of());
	}

	/** What several rules make lacks what one of them does not say. */
	private void add(EClassifier type, Set<String> features) {
		byType.merge(type, features, (some, others) -> {
			Set<String> both = new HashSet<>(some);
			both.retainAll(others);
			return both;
		});
	}

	private static Action action(Group group) {
		return group.getElements().stream().filter(Action.class::isInstance).map(Action.class::cast).findFirst()
				.orElse(null);
	}

	/** By one turn of an element. */
	private static Set<String> said(AbstractElement element) {
		Set<String> features = new HashSet<>();
		if (element instanceof Assignment assignment && !assignment.getOperator().equals(FLAG)) {
			features.add(assignment.getFeature());
		} else if (element instanceof Action action && action.getFeature() != null) {
			features.add(action.getFeature());
		} else if (element instanceof Group group) {
			group.getElements().forEach(each -> features.addAll(always(each)));
		} else if (element instanceof Alternatives choice) {
			features.addAll(always(choice.getElements().get(0)));
			choice.getElements().forEach(each -> features.retainAll(always(each)));
		}
		return features;
	}

	private static Set<String> always(AbstractElement element) {
		return GrammarUtil.isOptionalCardinality(element) ? Set.of() : said(element);
	}
}

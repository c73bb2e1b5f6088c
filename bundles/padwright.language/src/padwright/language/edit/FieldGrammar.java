package padwright.language.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.xtext.AbstractElement;
import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.Alternatives;
import org.eclipse.xtext.Assignment;
import org.eclipse.xtext.CrossReference;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.Group;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.Keyword;
import org.eclipse.xtext.RuleCall;

/** What the grammar says of the place of one assignment: the part that is missing with it, and the words in that part. */
final class FieldGrammar {

	private final Assignment assignment;

	private FieldGrammar(Assignment assignment) {
		this.assignment = assignment;
	}

	/** The only assignment to a feature in the rule of an element; nothing where there are several. */
	static Optional<FieldGrammar> of(AbstractRule rule, String feature) {
		List<Assignment> found = GrammarUtil.containedAssignments(rule).stream()
				.filter(each -> each.getFeature().equals(feature)).toList();
		return found.size() == 1 && isInOnePlace(found.get(0)) ? Optional.of(new FieldGrammar(found.get(0)))
				: Optional.empty();
	}

	/** One value, or several one behind the other. */
	private static boolean isInOnePlace(Assignment assignment) {
		return assignment.getOperator().equals("=")
				|| assignment.getOperator().equals("+=") && GrammarUtil.isMultipleCardinality(assignment);
	}

	/** The first thing that a rule says of its element; nothing for a rule that says nothing. */
	static Optional<String> firstFeature(AbstractRule rule) {
		return GrammarUtil.containedAssignments(rule).stream().map(Assignment::getFeature).findFirst();
	}

	/** Whether an element begins with a value, not with a word of its own as a block does. */
	static boolean beginsWithAValue(AbstractRule rule) {
		return order(rule).get(0) instanceof Assignment;
	}

	/** Whether an element can be said by a name alone, which it begins with. */
	static boolean isNameAndOptions(AbstractRule rule) {
		return rule.getAlternatives() instanceof Group group && group.getElements().get(0) instanceof Assignment first
				&& first.getTerminal() instanceof CrossReference
				&& group.getElements().stream().skip(1).allMatch(GrammarUtil::isOptionalCardinality);
	}

	/** The rule of the value, or of the name of what is referred to; nothing where it is not one rule. */
	Optional<AbstractRule> valueRule() {
		AbstractElement value = assignment.getTerminal() instanceof CrossReference reference ? reference.getTerminal()
				: assignment.getTerminal();
		return value instanceof RuleCall call ? Optional.of(call.getRule()) : Optional.empty();
	}

	/**
	 * The largest optional part around the assignment that is wholly missing, so that all that it asks for must be
	 * written; nothing where the assignment is one of several ways, or is not optional.
	 *
	 * @param written all elements of the grammar that the text has something of
	 */
	Optional<AbstractElement> missingPart(List<EObject> written) {
		AbstractElement part = null;
		for (EObject at = assignment; at instanceof AbstractElement element; at = at.eContainer()) {
			if (element instanceof Alternatives) {
				return Optional.empty();
			}
			if (written.stream().anyMatch(one -> EcoreUtil.isAncestor(element, one))) {
				break;
			}
			if (GrammarUtil.isOptionalCardinality(element)) {
				part = element;
			}
		}
		return Optional.ofNullable(part).filter(element -> !GrammarUtil.isMultipleCardinality(element));
	}

	/** The words before the value in its part; nothing where more than words and the value is asked for. */
	Optional<String> wordsBefore(AbstractElement part) {
		StringBuilder words = new StringBuilder();
		for (AbstractElement member : part instanceof Group group ? group.getElements() : List.of(part)) {
			if (member == assignment) {
				return isRestOptional((Group) (part instanceof Group ? part : null)) ? Optional.of(words.toString())
						: Optional.empty();
			}
			Optional<String> word = word(member);
			if (word.isPresent()) {
				words.append(word.get()).append(' ');
			} else if (!GrammarUtil.isOptionalCardinality(member)) {
				return Optional.empty();
			}
		}
		return Optional.empty();
	}

	private boolean isRestOptional(Group group) {
		return group == null || group.getElements().stream()
				.skip(group.getElements().indexOf(assignment) + 1L).allMatch(GrammarUtil::isOptionalCardinality);
	}

	private static Optional<String> word(AbstractElement member) {
		if (GrammarUtil.isOptionalCardinality(member)) {
			return Optional.empty();
		}
		if (member instanceof Alternatives ways && ways.getElements().stream().allMatch(Keyword.class::isInstance)) {
			return word(ways.getElements().get(0));
		}
		return member instanceof Keyword keyword ? Optional.of(keyword.getValue()) : Optional.empty();
	}

	/** All keywords and assignments of the rule, in the order in which they are written. */
	static List<EObject> order(AbstractRule rule) {
		List<EObject> order = new ArrayList<>();
		EcoreUtil2.eAllOfType(rule, AbstractElement.class).stream()
				.filter(element -> element instanceof Keyword || element instanceof Assignment).forEach(order::add);
		return order;
	}
}

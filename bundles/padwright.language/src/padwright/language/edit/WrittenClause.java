package padwright.language.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.xtext.AbstractElement;
import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.Assignment;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.Keyword;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.INode;

/**
 * An optional part of an element, such as {@code closes As, G}: where it stands, or belongs, in the text. The grammar says
 * which words it begins with and what it comes behind.
 */
final class WrittenClause {

	private final ICompositeNode element;
	private final AbstractElement part;
	private final List<INode> nodes = new ArrayList<>();
	private final INode behind;

	private WrittenClause(ICompositeNode element, AbstractRule rule, AbstractElement part) {
		this.element = element;
		this.part = part;
		List<INode> parts = MissingField.parts(element);
		parts.stream().filter(node -> EcoreUtil.isAncestor(part, node.getGrammarElement())).forEach(nodes::add);
		behind = MissingField.lastBefore(parts, rule, part).orElse(null);
	}

	/** The optional part of an element that says a feature; nothing where an element must say it. */
	static Optional<WrittenClause> of(EObject element, String feature) {
		ICompositeNode node = ClauseEdits.node(element);
		return ElementFields.rule(element)
				.flatMap(rule -> part(rule, feature).map(part -> new WrittenClause(node, rule, part)))
				.filter(clause -> clause.behind != null);
	}

	private static Optional<AbstractElement> part(AbstractRule rule, String feature) {
		Optional<Assignment> assignment = GrammarUtil.containedAssignments(rule).stream()
				.filter(each -> each.getFeature().equals(feature)).findFirst();
		for (EObject at = assignment.orElse(null); at instanceof AbstractElement element; at = at.eContainer()) {
			if (GrammarUtil.isOptionalCardinality(element)) {
				return Optional.of(element);
			}
		}
		return Optional.empty();
	}

	/** Whether it can be written by itself: all that it would be a part of is there. */
	boolean isPossible() {
		List<INode> parts = MissingField.parts(element);
		for (EObject at = part.eContainer(); at instanceof AbstractElement around; at = at.eContainer()) {
			if (GrammarUtil.isOptionalCardinality(around)
					&& parts.stream().noneMatch(node -> EcoreUtil.isAncestor(around, node.getGrammarElement()))) {
				return false;
			}
		}
		return true;
	}

	AbstractElement part() {
		return part;
	}

	/** The first word of the clause, as in {@code closes}; empty where it begins with its value. */
	String word() {
		return EcoreUtil2.eAllOfType(part, AbstractElement.class).stream()
				.filter(each -> each instanceof Keyword || each instanceof Assignment).findFirst()
				.filter(Keyword.class::isInstance).map(word -> ((Keyword) word).getValue()).orElse("");
	}

	/** The clause as it is written, in one line and without remarks; empty where it is not. */
	String text() {
		return nodes.isEmpty() ? "" : ClauseEdits.inOneLine(element, nodes.get(0).getOffset(), end());
	}

	/** Makes this the clause; remarks inside the old one come behind it. */
	TextEdit put(String clause) {
		if (nodes.isEmpty()) {
			return ClauseEdits.insertion(behind, " " + clause);
		}
		int start = nodes.get(0).getOffset();
		TextEdit removal = ClauseEdits.removal(element, start, end());
		return new TextEdit(start, removal.length(), clause + removal.text());
	}

	/** Takes the clause out with the blank before it; nothing where it is not written. */
	List<TextEdit> takeOut() {
		return nodes.isEmpty() ? List.of() : List.of(ClauseEdits.removal(element, ClauseEdits.end(behind), end()));
	}

	private int end() {
		return ClauseEdits.end(nodes.get(nodes.size() - 1));
	}
}

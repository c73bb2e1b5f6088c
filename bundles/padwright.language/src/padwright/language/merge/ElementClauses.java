package padwright.language.merge;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.AbstractElement;
import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.Action;
import org.eclipse.xtext.Group;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.ParserRule;
import org.eclipse.xtext.RuleCall;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.INode;

/** Finds the clauses of an element by the grammar: what one member of its rule has read is one clause. */
final class ElementClauses {

	private static final String HEAD = "head";
	private static final String BLOCK_BEGIN = "{";
	private static final Set<String> REPEATED = Set.of("*", "+");

	/**
	 * A stretch of a text.
	 *
	 * @param node the element that it is, or null if it is not just one
	 */
	record Clause(String key, int rank, int start, int end, ICompositeNode node) {
	}

	private ElementClauses() {
	}

	/** The clauses of an element, in order. */
	static List<Clause> of(ICompositeNode element) {
		List<Clause> clauses = new ArrayList<>();
		boolean listed = false;
		for (INode node : element.getChildren()) {
			if (node instanceof ILeafNode leaf && leaf.isHidden() || node.getLength() == 0) {
				continue;
			}
			AbstractElement member = member(reading(node, rule(element)));
			boolean item = isElement(node) && REPEATED.contains(String.valueOf(member.getCardinality()));
			add(clauses, node, rank(member), item, listed);
			listed = item;
		}
		return clauses;
	}

	private static void add(List<Clause> clauses, INode node, int rank, boolean item, boolean afterItem) {
		int last = clauses.size() - 1;
		if (!item && !afterItem && last >= 0 && clauses.get(last).rank() == rank) {
			Clause begun = clauses.get(last);
			clauses.set(last, new Clause(begun.key(), rank, begun.start(), node.getEndOffset(), null));
			return;
		}
		String key = item ? Identity.of(node.getSemanticElement()) : "clause " + rank;
		clauses.add(new Clause(key, rank, node.getOffset(), node.getEndOffset(),
				isElement(node) ? (ICompositeNode) node : null));
	}

	private static boolean isElement(INode node) {
		return node instanceof ICompositeNode composite && composite.hasDirectSemanticElement()
				&& rule(composite) instanceof ParserRule read && !GrammarUtil.isDatatypeRule(read);
	}

	/** The rule that has read an element; an element whose rule begins with an action bears that instead of the call. */
	private static AbstractRule rule(ICompositeNode element) {
		EObject grammar = element.getGrammarElement();
		return grammar instanceof RuleCall call ? call.getRule() : GrammarUtil.containingRule(grammar);
	}

	/** The place in {@code around} that has read a node. */
	private static EObject reading(INode node, AbstractRule around) {
		EObject grammar = node.getGrammarElement();
		return grammar instanceof Action ? GrammarUtil.containedRuleCalls(around).stream()
				.filter(call -> call.getRule() == GrammarUtil.containingRule(grammar)).findFirst().orElseThrow() : grammar;
	}

	/** The member of the outermost group of a rule around a part of it. */
	private static AbstractElement member(EObject part) {
		EObject rule = GrammarUtil.containingRule(part);
		EObject member = part;
		while (member.eContainer() != rule && member.eContainer().eContainer() != rule) {
			member = member.eContainer();
		}
		return (AbstractElement) member;
	}

	private static int rank(AbstractElement member) {
		return member.eContainer() instanceof Group group ? group.getElements().indexOf(member) : 0;
	}

	/** With all up to the brace that begins the block as one clause. */
	static List<Clause> withHead(List<Clause> clauses) {
		int brace = 0;
		while (clauses.get(brace).end() - clauses.get(brace).start() != BLOCK_BEGIN.length()) {
			brace++;
		}
		List<Clause> joined = new ArrayList<>(clauses.subList(brace + 1, clauses.size()));
		joined.add(0, new Clause(HEAD, 0, clauses.get(0).start(), clauses.get(brace).end(), null));
		return joined;
	}
}

package padwright.language.edit;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.EcorePackage;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.xtext.AbstractElement;
import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.Alternatives;
import org.eclipse.xtext.Assignment;
import org.eclipse.xtext.CompoundElement;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.Keyword;
import org.eclipse.xtext.RuleCall;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.parser.IParser;
import org.eclipse.xtext.resource.XtextResource;

import padwright.language.messages.Messages;

/**
 * What an element says of one feature, as the text of its clause without the words that lead to it: a list of touches, a
 * coupling, a word that is there or not. It is judged by reading the whole document with it.
 */
final class ClauseText {

	private static final String REMARK = "//";

	private final EObject element;
	private final EStructuralFeature feature;
	private final Assignment assignment;
	private final Optional<WrittenClause> clause;

	private ClauseText(EObject element, EStructuralFeature feature, Assignment assignment) {
		this.element = element;
		this.feature = feature;
		this.assignment = assignment;
		clause = WrittenClause.of(element, feature.getName());
	}

	/** Nothing where the grammar has no such clause, or it cannot stand here. */
	static Optional<ClauseText> of(EObject element, EStructuralFeature feature) {
		Optional<AbstractRule> rule = ElementFields.rule(element);
		return rule.flatMap(of -> GrammarUtil.containedAssignments(of).stream()
				.filter(each -> each.getFeature().equals(feature.getName())).findFirst())
				.map(assignment -> new ClauseText(element, feature, assignment))
				.filter(text -> !text.nodes().isEmpty() || text.clause.filter(WrittenClause::isPossible).isPresent());
	}

	private List<INode> nodes() {
		return ClauseEdits.nodes(element, feature);
	}

	String text() {
		List<INode> nodes = nodes();
		return nodes.isEmpty() ? "" : ClauseEdits.inOneLine(ClauseEdits.node(element), nodes.get(0).getOffset(),
				ClauseEdits.end(nodes.get(nodes.size() - 1)));
	}

	private String document() {
		return ClauseEdits.node(element).getRootNode().getText();
	}

	/** The only word that it can be; nothing where it can be more. */
	Optional<String> word() {
		return feature.getEType() == EcorePackage.Literals.EBOOLEAN && assignment.getTerminal() instanceof Keyword word
				? Optional.of(word.getValue()) : Optional.empty();
	}

	/** The name that each entry of a list begins with, where it asks for no more; nothing of other clauses. */
	Optional<EReference> firstName() {
		return Optional.of(assignment.getTerminal()).filter(RuleCall.class::isInstance)
				.map(call -> ((RuleCall) call).getRule()).filter(rule -> feature.isMany() && FieldGrammar.isNameAndOptions(rule))
				.flatMap(FieldGrammar::firstFeature)
				.map(first -> (EReference) ((EReference) feature).getEReferenceType().getEStructuralFeature(first));
	}

	Optional<String> fault(String value) {
		if (value.isBlank()) {
			return clause.isPresent() ? Optional.empty() : Optional.of(Messages.of("field.empty"));
		}
		IParser parser = ((XtextResource) element.eResource()).getResourceServiceProvider().get(IParser.class);
		String edited = TextEdit.apply(edit(value), document());
		boolean isBroken = value.contains(REMARK) || faults(parser, edited) > faults(parser, document());
		return isBroken ? Optional.of(Messages.of("field.notHere", value.strip())) : Optional.empty();
	}

	private static int faults(IParser parser, String text) {
		int faults = 0;
		for (INode fault : parser.parse(new StringReader(text)).getSyntaxErrors()) {
			faults += fault.getSyntaxErrorMessage() == null ? 0 : 1;
		}
		return faults;
	}

	/** Writes the clause, or takes it out where nothing is left of it; remarks inside it come behind it. */
	List<TextEdit> edit(String value) {
		List<INode> nodes = nodes();
		if (value.isBlank()) {
			return clause.map(WrittenClause::takeOut).orElse(List.of());
		}
		if (nodes.isEmpty()) {
			return List.of(clause.orElseThrow().put(written(value)));
		}
		int start = nodes.get(0).getOffset();
		TextEdit old = ClauseEdits.removal(ClauseEdits.node(element), start, ClauseEdits.end(nodes.get(nodes.size() - 1)));
		return List.of(new TextEdit(start, old.length(), value.strip() + old.text()));
	}

	/** With the words that the grammar wants before and behind it. */
	String written(String value) {
		List<String> words = new ArrayList<>();
		clause.ifPresentOrElse(part -> words(part.part(), words, value.strip()), () -> words.add(value.strip()));
		return String.join(" ", words);
	}

	private void words(AbstractElement part, List<String> words, String value) {
		if (part == assignment) {
			words.add(value);
		} else if (part instanceof Keyword word) {
			words.add(word.getValue());
		} else if (part instanceof CompoundElement whole) {
			boolean isChoice = whole instanceof Alternatives;
			for (AbstractElement member : whole.getElements()) {
				boolean isOurs = EcoreUtil.isAncestor(member, assignment);
				if (isOurs || !isChoice && !GrammarUtil.isOptionalCardinality(member)) {
					words(member, words, value);
				}
			}
		}
	}
}

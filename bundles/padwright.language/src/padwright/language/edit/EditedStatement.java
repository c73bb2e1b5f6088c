package padwright.language.edit;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.xtext.RuleCall;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.parser.IParser;
import org.eclipse.xtext.resource.XtextResource;

import padwright.engine.length.LengthUnit;

/**
 * A statement as it would be read after edits of its document.
 *
 * @param original the statement as it is
 * @param text of the edited document
 */
record EditedStatement(EObject original, String text) {

	private static final String MEASURE = "Measure";

	static EditedStatement of(EObject statement, List<TextEdit> edits) {
		return new EditedStatement(statement, TextEdit.apply(edits, ClauseEdits.node(statement).getRootNode().getText()));
	}

	private EObject read() {
		XtextResource document = (XtextResource) original.eResource();
		IParser parser = document.getResourceServiceProvider().get(IParser.class);
		return EcoreUtil.getEObject(parser.parse(new StringReader(text)).getRootASTElement(),
				EcoreUtil.getRelativeURIFragmentPath(document.getContents().get(0), original));
	}

	/** With a unit behind every length that has none. */
	EditedStatement in(LengthUnit unit) {
		List<TextEdit> units = new ArrayList<>();
		for (INode node : ClauseEdits.node(read()).getAsTreeIterable()) {
			if (node.getGrammarElement() instanceof RuleCall call && call.getRule().getName().equals(MEASURE)
					&& node.getText().chars().noneMatch(Character::isLetter)) {
				units.add(ClauseEdits.insertion(node, " " + unit.symbol()));
			}
		}
		return new EditedStatement(original, TextEdit.apply(units, text));
	}

	/** A clause with the words that lead to it; empty where it is not said. */
	String clause(String feature) {
		EObject statement = read();
		return WrittenClause.of(statement, feature).map(WrittenClause::text).orElseGet(() -> {
			List<INode> nodes = ClauseEdits.nodes(statement, statement.eClass().getEStructuralFeature(feature));
			return nodes.isEmpty() ? "" : ClauseEdits.inOneLine(ClauseEdits.node(statement), nodes.get(0).getOffset(),
					ClauseEdits.end(nodes.get(nodes.size() - 1)));
		});
	}

	/** Whether nothing is said but what it is about. */
	boolean saysNothing() {
		EObject statement = read();
		String about = ElementFields.rule(statement).flatMap(FieldGrammar::firstFeature)
				.orElse("");
		return statement.eClass().getEAllStructuralFeatures().stream().filter(each -> !each.getName().equals(about))
				.allMatch(each -> ClauseEdits.nodes(statement, each).isEmpty());
	}
}

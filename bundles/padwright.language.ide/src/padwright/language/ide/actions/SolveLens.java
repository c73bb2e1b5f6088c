package padwright.language.ide.actions;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.lsp4j.CodeLens;
import org.eclipse.lsp4j.CodeLensParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.xtext.ide.server.Document;
import org.eclipse.xtext.ide.server.codelens.ICodeLensService;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.util.CancelIndicator;

import padwright.language.ide.facts.Plans;
import padwright.language.ide.solving.SolveKey;
import padwright.language.ide.words.Messages;
import padwright.model.plan.KeyService;
import padwright.model.plan.Plan;

/** "Solve this key" above every row that was measured or felt. */
public final class SolveLens implements ICodeLensService {

	@Override
	public List<? extends CodeLens> computeCodeLenses(Document document, XtextResource resource,
			CodeLensParams params, CancelIndicator cancelled) {
		List<CodeLens> lenses = new ArrayList<>();
		for (Plan plan : Plans.in(resource)) {
			for (KeyService row : plan.getKeys()) {
				if (row.getEmpty() != null || !row.getRounds().isEmpty()) {
					lenses.add(lens(row, params.getTextDocument().getUri(), document));
				}
			}
		}
		return lenses;
	}

	private static CodeLens lens(KeyService row, String uri, Document document) {
		INode node = NodeModelUtils.findActualNodeFor(row);
		Position start = document.getPosition(node.getOffset());
		boolean solved = row.getStack() != null;
		return new CodeLens(new Range(start, start),
				SolveKey.command(solved ? Messages.of("solve.again") : Messages.of("solve.this"), uri, row), null);
	}
}

package padwright.language.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

import padwright.engine.length.Length;
import padwright.model.LengthText;
import padwright.model.plan.KeyService;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.Round;
import padwright.workup.solve.HeightAnswer;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.LevelAnswer;
import padwright.workup.solve.PlanSolution;
import padwright.workup.solve.WrittenAnswers;

/** Puts solved shims into the text of a plan, and touches nothing else in it. */
public final class SolutionEdits {

	private static final String STACK = "stack";
	private static final String SHIM = "shim";

	private final WrittenAnswers written;

	private SolutionEdits(WrittenAnswers written) {
		this.written = written;
	}

	/** The edits that note a solution in the plan it was made from. */
	public static List<TextEdit> of(PlanSolution solution, WrittenAnswers written) {
		SolutionEdits edits = new SolutionEdits(written);
		return solution.keys().stream().flatMap(edits::of).toList();
	}

	private Stream<TextEdit> of(KeySolution key) {
		KeyService service = key.job().service();
		List<TextEdit> edits = new ArrayList<>();
		key.height().filter(HeightAnswer::reachesHeight).flatMap(answer -> stack(service, answer)).ifPresent(edits::add);
		key.level().flatMap(answer -> shims(key.job().lastRound().orElseThrow(), answer)).ifPresent(edits::add);
		return edits.stream();
	}

	private Optional<TextEdit> stack(KeyService service, HeightAnswer answer) {
		List<Length> pieces = answer.solution().pieces();
		if (service.getStack() == null) {
			return pieces.isEmpty() ? Optional.empty()
					: Optional.of(new TextEdit(end(beforeStack(service)), 0, " " + STACK + " " + LengthText.row(pieces, service)));
		}
		if (written == WrittenAnswers.KEEP) {
			return Optional.empty();
		}
		return Optional.of(replacement(NodeModelUtils.findActualNodeFor(service), STACK,
				NodeModelUtils.findActualNodeFor(service.getStack()),
				pieces.isEmpty() ? "" : STACK + " " + LengthText.row(pieces, service)));
	}

	private Optional<TextEdit> shims(Round round, LevelAnswer answer) {
		String pieces = answer.solution().pieces().isEmpty() ? "none"
				: answer.solution().pieces().stream().map(piece -> LengthText.measure(piece.thickness(), round) + " " + piece.arc())
						.collect(Collectors.joining(", "));
		INode node = NodeModelUtils.findActualNodeFor(round);
		if (!round.isLevel() && round.getPieces().isEmpty()) {
			return Optional.of(new TextEdit(end(node), 0, " " + SHIM + " " + pieces));
		}
		return written == WrittenAnswers.KEEP ? Optional.empty()
				: Optional.of(replacement(node, SHIM, node, SHIM + " " + pieces));
	}

	/** Replaces a clause from its keyword to the end of its last node; the remarks inside it come behind it. */
	private static TextEdit replacement(INode row, String keyword, INode last, String clause) {
		int start = keyword(row, keyword).getOffset();
		StringBuilder text = new StringBuilder(clause);
		for (ILeafNode leaf : row.getLeafNodes()) {
			if (leaf.isHidden() && leaf.getText().startsWith("//") && leaf.getOffset() > start
					&& leaf.getOffset() < end(last)) {
				text.append(' ').append(leaf.getText());
			}
		}
		return new TextEdit(start, end(last) - start, text.toString());
	}

	private static INode keyword(INode row, String keyword) {
		for (ILeafNode leaf : row.getLeafNodes()) {
			if (!leaf.isHidden() && leaf.getText().equals(keyword)) {
				return leaf;
			}
		}
		throw new IllegalStateException("a row with such a clause has the word " + keyword);
	}

	/** The last thing in a row that stands before the stack. */
	private static INode beforeStack(KeyService service) {
		Optional<EObject> last = Stream.<EObject>of(service.getEmpty(), service.getFitting())
				.filter(part -> part != null).findFirst();
		return last.<INode>map(NodeModelUtils::findActualNodeFor).orElseGet(() -> lastWord(service));
	}

	private static INode lastWord(KeyService service) {
		var feature = service.isSetFound() ? PlanPackage.Literals.KEY_SERVICE__FOUND
				: PlanPackage.Literals.KEY_SERVICE__KEY;
		return NodeModelUtils.findNodesForFeature(service, feature).get(0);
	}

	private static int end(INode node) {
		return node.getOffset() + node.getLength();
	}
}

package padwright.language.ide.hints;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.lsp4j.InlayHint;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.xtext.ide.server.Document;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.service.OperationCanceledManager;
import org.eclipse.xtext.util.CancelIndicator;

import com.google.inject.Inject;

import padwright.engine.clock.ClockHour;
import padwright.language.ide.facts.HeightFacts;
import padwright.language.ide.facts.Plans;
import padwright.language.ide.facts.RoundFacts;
import padwright.language.ide.words.Messages;
import padwright.model.plan.Plan;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.Round;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.BlindHours;
import padwright.workup.solve.HeightWork;
import padwright.workup.solve.RoundEffect;
import padwright.workup.words.LengthWords;

/** Figures at the ends of a plan's lines: what full shims sum to, and how likely a pad is level and will be. */
public final class LineHints {

	@Inject
	private OperationCanceledManager cancellation;

	/** The hints on the lines of {@code range}, in their order. */
	public List<InlayHint> hints(Document document, XtextResource resource, Range range, CancelIndicator cancelled) {
		Map<Integer, List<String>> byLine = new TreeMap<>();
		for (Plan plan : Plans.in(resource)) {
			addHours(plan, document, range, byLine);
			for (KeyJob job : new ServicePlan(plan).jobs()) {
				cancellation.checkCanceled(cancelled);
				addStack(job, document, range, byLine);
				job.service().getRounds().forEach(round -> addRound(job, round, document, range, byLine));
			}
		}
		String[] lines = document.getContents().split("\r?\n", -1);
		List<InlayHint> hints = new ArrayList<>();
		byLine.forEach((line, figures) -> hints.add(hint(line, lines[line].length(), String.join(", ", figures))));
		return hints;
	}

	private static void addHours(Plan plan, Document document, Range range, Map<Integer, List<String>> byLine) {
		List<ClockHour> hours = plan.getHours();
		if (BlindHours.are(hours)) {
			List<INode> nodes = NodeModelUtils.findNodesForFeature(plan, PlanPackage.Literals.PLAN__HOURS);
			lineOf(nodes.get(nodes.size() - 1), document, range).ifPresent(line -> add(line,
					Messages.of("hint.alias", hours.size(), BlindHours.between(hours)), byLine));
		}
	}

	private static void addStack(KeyJob job, Document document, Range range, Map<Integer, List<String>> byLine) {
		if (!job.stack().isEmpty()) {
			lineOf(job.service().getStack(), document, range).ifPresent(line -> add(line,
					HeightWork.of(job).map(work -> HeightFacts.sum("hint.sum", job, work))
							.orElseGet(() -> Messages.of("hint.sum", LengthWords.withUnit(job.stackSum()))), byLine));
		}
	}

	private static void addRound(KeyJob job, Round round, Document document, Range range,
			Map<Integer, List<String>> byLine) {
		lineOf(round, document, range).ifPresent(line -> RoundEffect.of(job, round)
				.ifPresent(effect -> add(line, Messages.of("hint.level", RoundFacts.chance(effect)), byLine)));
	}

	private static Optional<Integer> lineOf(EObject element, Document document, Range range) {
		return lineOf(NodeModelUtils.findActualNodeFor(element), document, range);
	}

	private static Optional<Integer> lineOf(INode node, Document document, Range range) {
		int line = document.getPosition(node.getEndOffset()).getLine();
		return line >= range.getStart().getLine() && line <= range.getEnd().getLine() ? Optional.of(line)
				: Optional.empty();
	}

	private static void add(int line, String figure, Map<Integer, List<String>> byLine) {
		byLine.computeIfAbsent(line, none -> new ArrayList<>()).add(figure);
	}

	private static InlayHint hint(int line, int column, String text) {
		InlayHint hint = new InlayHint(new Position(line, column), Either.forLeft(text));
		hint.setPaddingLeft(true);
		return hint;
	}
}

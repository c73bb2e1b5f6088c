package padwright.language.ide.solving;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.lsp4j.Command;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.service.OperationCanceledManager;
import org.eclipse.xtext.util.CancelIndicator;

import com.google.inject.Inject;

import padwright.language.edit.SolutionEdits;
import padwright.language.edit.TextEdit;
import padwright.model.plan.KeyService;
import padwright.model.plan.Plan;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.PlanSolution;
import padwright.workup.solve.PlanSolver;
import padwright.workup.solve.WrittenAnswers;
import padwright.workup.words.Phrase;

/** Solves one row of a plan, with the film that the rows before it leave, as a solve of the whole plan would. */
public final class SolveKey {

	/** The command that an editor sends, with the document's URI and the row's path in it. */
	public static final String COMMAND = "padwright.solveKey";

	/**
	 * What came of it.
	 *
	 * @param edits of the plan's text; none where nothing could be solved
	 * @param unsolved why something could not be solved
	 */
	public record Answer(List<TextEdit> edits, List<Phrase> unsolved) {
	}

	@Inject
	private OperationCanceledManager cancellation;

	/** The command as it is offered to solve a row. */
	public static Command command(String title, String uri, KeyService row) {
		return new Command(title, COMMAND, List.of(uri, row.eResource().getURIFragment(row)));
	}

	/** Solves the row at a path of a document, in place of answers it holds; nothing if there is no such row. */
	public Optional<Answer> solve(XtextResource resource, String path, CancelIndicator cancelled) {
		EObject row = resource.getEObject(path);
		return row instanceof KeyService service
				? Optional.of(solve(EcoreUtil2.getContainerOfType(service, Plan.class), service, cancelled))
				: Optional.empty();
	}

	private Answer solve(Plan plan, KeyService row, CancelIndicator cancelled) {
		PlanSolution solution = PlanSolver.solve(new ServicePlan(plan), WrittenAnswers.KEEP,
				job -> cancellation.checkCanceled(cancelled));
		List<KeySolution> own = solution.keys().stream().filter(key -> key.job().service() == row).toList();
		return new Answer(
				SolutionEdits.of(new PlanSolution(solution.plan(), own), WrittenAnswers.REPLACE),
				own.stream().flatMap(key -> key.unsolved().stream()).toList());
	}
}

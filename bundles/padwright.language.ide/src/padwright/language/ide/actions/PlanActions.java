package padwright.language.ide.actions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.xtext.ide.server.Document;
import org.eclipse.xtext.ide.server.ILanguageServerAccess.Context;
import org.eclipse.xtext.ide.server.codeActions.ICodeActionService2;
import org.eclipse.xtext.resource.EObjectAtOffsetHelper;
import org.eclipse.xtext.resource.XtextResource;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.inject.Inject;

import padwright.language.ide.facts.Rows;
import padwright.language.ide.fixes.Cures;
import padwright.language.ide.fixes.DraftEstimate;
import padwright.language.ide.fixes.Fix;
import padwright.language.ide.fixes.MissingRows;
import padwright.language.ide.fixes.Site;
import padwright.language.ide.solving.SolveKey;
import padwright.language.ide.words.Messages;

/** What an editor offers at a place: fixes for its findings, and work that can be done there. */
public final class PlanActions implements ICodeActionService2 {

	@Inject
	private EObjectAtOffsetHelper elements;

	@Override
	public List<Either<Command, CodeAction>> getCodeActions(Options options) {
		return options.getLanguageServerAccess().doSyncRead(options.getURI(), context -> {
			List<CodeAction> actions = new ArrayList<>();
			if (isWanted(options, CodeActionKind.QuickFix)) {
				options.getCodeActionParams().getContext().getDiagnostics()
						.forEach(finding -> actions.addAll(fixes(finding, options.getURI(), context)));
			}
			if (isWanted(options, CodeActionKind.RefactorRewrite)) {
				actions.addAll(work(options.getCodeActionParams().getRange(), options.getURI(), context));
			}
			return actions.stream().<Either<Command, CodeAction>>map(Either::forRight).toList();
		});
	}

	/** A kind is wanted where a client asks for none in particular, for it, or for a kind of which it is one. */
	private static boolean isWanted(Options options, String kind) {
		List<String> only = options.getCodeActionParams().getContext().getOnly();
		return only == null || only.isEmpty() || only.stream().anyMatch(asked -> kind.equals(asked)
				|| kind.startsWith(asked + "."));
	}

	private List<CodeAction> fixes(Diagnostic finding, String uri, Context context) {
		if (finding.getCode() == null || !finding.getCode().isLeft()) {
			return List.of();
		}
		Document document = context.getDocument();
		int offset = document.getOffSet(finding.getRange().getStart());
		EObject element = elements.resolveContainedElementAt((XtextResource) context.getResource(), offset);
		Site site = new Site(element, offset, document.getSubstring(finding.getRange()), data(finding));
		return Cures.of(finding.getCode().getLeft(), site).stream().map(fix -> {
			CodeAction action = action(fix, CodeActionKind.QuickFix, uri, document);
			action.setDiagnostics(List.of(finding));
			return action;
		}).toList();
	}

	/** Gone through JSON, the data of a finding is an array of texts of another kind. */
	private static List<String> data(Diagnostic finding) {
		if (finding.getData() instanceof String[] texts) {
			return List.of(texts);
		}
		return finding.getData() instanceof JsonArray array
				? array.asList().stream().map(JsonElement::getAsString).toList() : List.of();
	}

	private List<CodeAction> work(Range range, String uri, Context context) {
		EObject element = elements.resolveContainedElementAt((XtextResource) context.getResource(),
				context.getDocument().getOffSet(range.getStart()));
		Optional<CodeAction> solve = Rows.around(element).map(job -> {
			CodeAction action = new CodeAction(Messages.of("solve.key", job.name()));
			action.setKind(CodeActionKind.RefactorRewrite);
			action.setCommand(SolveKey.command(action.getTitle(), uri, job.service()));
			return action;
		});
		Optional<CodeAction> rows = Rows.plan(element).flatMap(MissingRows::of)
				.map(fix -> action(fix, CodeActionKind.RefactorRewrite, uri, context.getDocument()));
		Optional<CodeAction> estimate = Rows.plan(element).flatMap(DraftEstimate::of)
				.map(fix -> action(fix, CodeActionKind.RefactorRewrite, uri, context.getDocument()));
		return Stream.of(solve, rows, estimate).flatMap(Optional::stream).toList();
	}

	private static CodeAction action(Fix fix, String kind, String uri, Document document) {
		CodeAction action = new CodeAction(fix.title());
		action.setKind(kind);
		action.setEdit(Edits.of(fix.edits(), uri, document));
		return action;
	}
}

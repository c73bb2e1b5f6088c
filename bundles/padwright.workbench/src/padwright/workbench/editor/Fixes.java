package padwright.workbench.editor;

import java.util.List;
import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.ui.IMarkerResolution;
import org.eclipse.ui.IMarkerResolutionGenerator2;

import padwright.workbench.session.Answers;
import padwright.workbench.session.Documents;
import padwright.workbench.session.Finding;
import padwright.workbench.session.LanguageSession;

/** The cures of a finding, as the server knows them. */
public final class Fixes implements IMarkerResolutionGenerator2 {

	/** Whether a cure exists is only known once it is asked for; asking for every marker would be slow. */
	@Override
	public boolean hasResolutions(IMarker marker) {
		return marker.getResource() instanceof IFile && Finding.of(marker).isPresent();
	}

	@Override
	public IMarkerResolution[] getResolutions(IMarker marker) {
		return of(marker).stream().map(ActionResolution::new).toArray(IMarkerResolution[]::new);
	}

	/** What the server offers against a finding. */
	static List<CodeAction> of(IMarker marker) {
		return Finding.of(marker).stream().flatMap(finding -> actions(marker, finding).stream())
				.filter(Either::isRight).map(Either::getRight).toList();
	}

	private static List<Either<Command, CodeAction>> actions(IMarker marker, Diagnostic finding) {
		CodeActionContext context = new CodeActionContext(List.of(finding), List.of(CodeActionKind.QuickFix));
		Optional<String> uri = Documents.uri((IFile) marker.getResource());
		return LanguageSession.get().running().flatMap(server -> uri.flatMap(known -> Answers.await(() -> server.documents()
				.codeAction(new CodeActionParams(new TextDocumentIdentifier(known), finding.getRange(), context)))))
				.orElse(List.of());
	}
}

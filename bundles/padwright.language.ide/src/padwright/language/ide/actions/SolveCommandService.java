package padwright.language.ide.actions;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.lsp4j.ApplyWorkspaceEditParams;
import org.eclipse.lsp4j.ExecuteCommandParams;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.MessageType;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.xtext.ide.server.ILanguageServerAccess;
import org.eclipse.xtext.ide.server.commands.IExecutableCommandService;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.util.CancelIndicator;

import com.google.gson.JsonPrimitive;
import com.google.inject.Inject;

import padwright.language.ide.solving.SolveKey;
import padwright.language.ide.words.Messages;
import padwright.workup.words.Phrase;

/** Solves a row on an editor's command and asks the editor to write the answer into the plan. */
public final class SolveCommandService implements IExecutableCommandService {

	@Inject
	private SolveKey solver;

	@Override
	public List<String> initialize() {
		return List.of(SolveKey.COMMAND);
	}

	@Override
	public Object execute(ExecuteCommandParams params, ILanguageServerAccess access, CancelIndicator cancelled) {
		List<String> arguments = params.getArguments().stream().map(SolveCommandService::text).toList();
		if (!params.getCommand().equals(SolveKey.COMMAND) || arguments.size() != 2) {
			throw new IllegalArgumentException(SolveKey.COMMAND + " takes a document and a row");
		}
		String uri = arguments.get(0);
		access.doSyncRead(uri, context -> {
			solver.solve((XtextResource) context.getResource(), arguments.get(1), cancelled)
					.ifPresent(answer -> tell(answer, uri, context, access.getLanguageClient()));
			return null;
		});
		return null;
	}

	private static void tell(SolveKey.Answer answer, String uri, ILanguageServerAccess.Context context,
			LanguageClient client) {
		if (!answer.edits().isEmpty()) {
			WorkspaceEdit edit = Edits.of(answer.edits(), uri, context.getDocument());
			client.applyEdit(new ApplyWorkspaceEditParams(edit, Messages.of("solve.edit")));
		}
		Optional.of(answer.unsolved()).filter(reasons -> !reasons.isEmpty())
				.ifPresent(reasons -> client.showMessage(
						new MessageParams(MessageType.Info, reasons.stream().map(Phrase::words).collect(Collectors.joining("; ")))));
	}

	private static String text(Object argument) {
		return argument instanceof JsonPrimitive json ? json.getAsString() : String.valueOf(argument);
	}
}

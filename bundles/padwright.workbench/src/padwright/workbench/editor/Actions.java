package padwright.workbench.editor;

import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.ExecuteCommandParams;

import padwright.workbench.session.LanguageSession;
import padwright.workbench.session.WorkspaceEdits;

/** Does what the server offered. */
final class Actions {

	private Actions() {
	}

	/** Applies an action's edit, then has the server carry out its command. In the UI thread. */
	static void run(CodeAction action) {
		if (action.getEdit() != null) {
			WorkspaceEdits.apply(action.getTitle(), action.getEdit());
		}
		if (action.getCommand() != null) {
			run(action.getCommand());
		}
	}

	static void run(Command command) {
		LanguageSession.get().running().ifPresent(server -> server.workspace()
				.executeCommand(new ExecuteCommandParams(command.getCommand(), command.getArguments())));
	}
}

package padwright.workbench.session;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.jface.text.Document;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.ltk.core.refactoring.CompositeChange;
import org.eclipse.ltk.core.refactoring.PerformChangeOperation;
import org.eclipse.ltk.core.refactoring.RefactoringCore;
import org.eclipse.ltk.core.refactoring.TextFileChange;
import org.eclipse.text.edits.MultiTextEdit;
import org.eclipse.text.edits.ReplaceEdit;

import padwright.workbench.safe.SafeTextChange;

/** Applies what the server wants to be changed, in any number of files, as one step that can be undone. */
public final class WorkspaceEdits {

	private WorkspaceEdits() {
	}

	/** Applies all of an edit or nothing; texts that are open stay unsaved, others are saved. In the UI thread. */
	public static boolean apply(String label, WorkspaceEdit edit) {
		CompositeChange change = new CompositeChange(label == null ? "" : label);
		for (Map.Entry<String, List<TextEdit>> file : edit.getChanges().entrySet()) {
			Optional<TextFileChange> edits = Documents.file(file.getKey()).map(found -> change(found, file.getValue()));
			if (edits.isEmpty()) {
				return false;
			}
			change.add(edits.get());
		}
		return perform(change);
	}

	private static boolean perform(CompositeChange change) {
		change.initializeValidationData(new NullProgressMonitor());
		PerformChangeOperation operation = new PerformChangeOperation(change);
		operation.setUndoManager(RefactoringCore.getUndoManager(), change.getName());
		try {
			operation.run(new NullProgressMonitor());
			return operation.changeExecuted() && !operation.changeExecutionFailed();
		} catch (CoreException failed) {
			ILog.of(WorkspaceEdits.class).log(failed.getStatus());
			StatusLine.tell(failed.getMessage(), true);
			return false;
		}
	}

	private static TextFileChange change(IFile file, List<TextEdit> edits) {
		TextFileChange change = new SafeTextChange(file.getName(), file);
		Optional<IDocument> open = Documents.open(file);
		change.setSaveMode(open.isPresent() ? TextFileChange.LEAVE_DIRTY : TextFileChange.FORCE_SAVE);
		change.setEdit(edit(edits, open.orElseGet(() -> onDisk(file))));
		return change;
	}

	/** Edits of a text, in the form that texts of the workbench take. */
	static MultiTextEdit edit(List<TextEdit> edits, IDocument text) {
		MultiTextEdit all = new MultiTextEdit();
		for (TextEdit edit : edits) {
			IRegion region = Positions.region(text, edit.getRange());
			all.addChild(new ReplaceEdit(region.getOffset(), region.getLength(), edit.getNewText()));
		}
		return all;
	}

	/** The text of a file that is not open; empty if it has gone. */
	public static IDocument onDisk(IFile file) {
		try {
			return new Document(new String(file.readAllBytes(), StandardCharsets.UTF_8));
		} catch (CoreException goneMeanwhile) {
			return new Document();
		}
	}
}

package padwright.workbench.safe;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Predicate;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.ResourceAttributes;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

import padwright.language.files.SafeFile;
import padwright.workbench.Messages;

/** A file that is marked as not to be written is written only once the user says so. */
final class Protection {

	private Protection() {
	}

	/** Whether a file may be written, now or because the user has just taken the mark away. */
	static boolean isLifted(Path path, IFile file) throws CoreException {
		return isLifted(path, file, Protection::ask);
	}

	/** @param allowed asks whether the file may be written all the same */
	static boolean isLifted(Path path, IFile file, Predicate<IFile> allowed) throws CoreException {
		try {
			if (!SafeFile.isProtected(path)) {
				return true;
			}
		} catch (IOException failed) {
			throw new CoreException(Status.error(Messages.get("save.failed", file.getName(), failed.getMessage()), failed));
		}
		if (!allowed.test(file)) {
			return false;
		}
		ResourceAttributes attributes = file.getResourceAttributes();
		attributes.setReadOnly(false);
		file.setResourceAttributes(attributes);
		return true;
	}

	private static boolean ask(IFile file) {
		AtomicBoolean allowed = new AtomicBoolean();
		IWorkbench workbench = PlatformUI.getWorkbench();
		workbench.getDisplay().syncExec(() -> {
			IWorkbenchWindow window = workbench.getActiveWorkbenchWindow();
			allowed.set(MessageDialog.openQuestion(window == null ? null : window.getShell(),
					Messages.get("save.protected.title"), Messages.get("save.protected", file.getName())));
		});
		return allowed.get();
	}
}

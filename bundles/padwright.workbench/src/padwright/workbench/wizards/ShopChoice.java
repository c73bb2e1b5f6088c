package padwright.workbench.wizards;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IFileEditorInput;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

import padwright.workbench.session.OpenShops;


/** The open shops, and the one that is being worked in. */
final class ShopChoice {

	private ShopChoice() {
	}

	static List<IFolder> shops() {
		List<IFolder> shops = new ArrayList<>();
		try {
			for (IResource member : OpenShops.project().members()) {
				if (member instanceof IFolder folder && folder.isLinked() && folder.getLocation() != null) {
					shops.add(folder);
				}
			}
		} catch (CoreException unreadable) {
			ILog.of(ShopChoice.class).log(unreadable.getStatus());
		}
		return shops;
	}

	/** The shop of the document in the active editor. */
	static Optional<IFolder> current(List<IFolder> shops) {
		IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
		IEditorPart editor = window == null ? null : window.getActivePage().getActiveEditor();
		if (editor == null || !(editor.getEditorInput() instanceof IFileEditorInput input)) {
			return Optional.empty();
		}
		IFile file = input.getFile();
		return shops.stream().filter(shop -> shop.getFullPath().isPrefixOf(file.getFullPath())).findFirst();
	}
}

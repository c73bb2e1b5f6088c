package padwright.workbench.shops;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

import padwright.workbench.session.OpenShops;

/** Takes the chosen shops out of the window, and their documents with them. Their files stay where they are. */
public final class CloseShopHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		IWorkbenchPage page = HandlerUtil.getActiveWorkbenchWindow(event).getActivePage();
		for (Object chosen : HandlerUtil.getCurrentStructuredSelection(event).toList()) {
			if (chosen instanceof IFolder shop && shop.isLinked() && page.closeEditors(documents(shop, page), true)) {
				close(shop);
			}
		}
		return null;
	}

	private static void close(IFolder shop) throws ExecutionException {
		try {
			OpenShops.close(shop, null);
		} catch (CoreException failed) {
			throw new ExecutionException(failed.getLocalizedMessage(), failed);
		}
	}

	private static IEditorReference[] documents(IFolder shop, IWorkbenchPage page) {
		List<IEditorReference> open = Arrays.stream(page.getEditorReferences())
				.filter(editor -> file(editor).filter(file -> shop.getFullPath().isPrefixOf(file.getFullPath()))
						.isPresent())
				.toList();
		return open.toArray(IEditorReference[]::new);
	}

	private static Optional<IFile> file(IEditorReference editor) {
		try {
			return Optional.ofNullable(editor.getEditorInput().getAdapter(IFile.class));
		} catch (PartInitException unreadable) {
			return Optional.empty();
		}
	}
}

package padwright.workbench.editor;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;

import padwright.language.files.SafeFile;
import padwright.language.shop.ShopFolder;
import padwright.workbench.Messages;
import padwright.workbench.safe.OnDisk;

/** Saves a text as another document of a shop that is open. */
final class SaveAs {

	private SaveAs() {
	}

	/** Asks where to, as the system asks for files; nothing if nobody answers. */
	static Optional<Path> ask(Shell shell, IFile now) {
		FileDialog dialog = new FileDialog(shell, SWT.SAVE);
		dialog.setText(Messages.get("saveAs.title"));
		OnDisk.path(now).ifPresent(path -> dialog.setFilterPath(path.getParent().toString()));
		dialog.setFileName(now.getName());
		dialog.setFilterExtensions(new String[] { "*." + now.getFileExtension() });
		dialog.setOverwrite(true);
		return Optional.ofNullable(dialog.open()).map(Path::of);
	}

	/** The file as it is then; nothing where it could not be written, which is told. */
	static Optional<IFile> write(Shell shell, Path to, String text) {
		try {
			return Optional.of(write(to, text));
		} catch (IOException | CoreException failed) {
			MessageDialog.openError(shell, Messages.get("saveAs.title"),
					Messages.get("save.failed", to.getFileName(), failed.getMessage()));
			return Optional.empty();
		}
	}

	private static IFile write(Path to, String text) throws IOException, CoreException {
		IFile file = Stream.of(ResourcesPlugin.getWorkspace().getRoot().findFilesForLocationURI(to.toUri())).findFirst()
				.filter(found -> ShopFolder.isDocument(to))
				.orElseThrow(() -> new IOException(Messages.get("saveAs.elsewhere")));
		byte[] content = text.getBytes(StandardCharsets.UTF_8);
		if (Files.exists(to)) {
			SafeFile.replace(to, content);
		} else {
			SafeFile.write(to, content);
		}
		file.refreshLocal(IResource.DEPTH_ZERO, null);
		return file;
	}
}

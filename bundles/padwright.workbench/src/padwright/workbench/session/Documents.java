package padwright.workbench.session;

import java.util.Optional;

import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.IFileBuffer;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.filebuffers.LocationKind;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.jface.text.IDocument;
import org.eclipse.lsp4j.TextDocumentIdentifier;

import padwright.language.ide.server.LocalServer;
import padwright.language.shop.ShopFolder;
import padwright.workbench.safe.OnDisk;

/** Between the files and texts of the workbench and what the server calls them. */
public final class Documents {

	private Documents() {
	}

	/** The server's name of an open text; nothing for a text that is no document of the language. */
	public static Optional<String> uri(IDocument document) {
		return Optional.ofNullable(FileBuffers.getTextFileBufferManager().getTextFileBuffer(document))
				.flatMap(Documents::uri);
	}

	public static Optional<TextDocumentIdentifier> identifier(IDocument document) {
		return uri(document).map(TextDocumentIdentifier::new);
	}

	static Optional<String> uri(IFileBuffer buffer) {
		return OnDisk.path(buffer).filter(ShopFolder::isDocument).map(LocalServer::uri);
	}

	public static Optional<String> uri(IFile file) {
		return OnDisk.path(file).map(LocalServer::uri);
	}

	/** The file of the workspace with a server's name. */
	public static Optional<IFile> file(String uri) {
		IFile[] files = ResourcesPlugin.getWorkspace().getRoot().findFilesForLocationURI(java.net.URI.create(uri));
		return files.length == 0 ? Optional.empty() : Optional.of(files[0]);
	}

	/** The text of a file as it is being edited, if it is. */
	public static Optional<IDocument> open(IFile file) {
		ITextFileBuffer buffer = FileBuffers.getTextFileBufferManager().getTextFileBuffer(file.getFullPath(),
				LocationKind.IFILE);
		return Optional.ofNullable(buffer).map(ITextFileBuffer::getDocument);
	}
}

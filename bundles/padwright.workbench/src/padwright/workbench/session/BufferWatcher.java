package padwright.workbench.session;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.IFileBuffer;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.runtime.IPath;
import org.eclipse.jface.text.DocumentEvent;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IDocumentListener;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;

import padwright.language.ide.server.LocalServer;

/** Tells the server of every text that is open, and of each change, saved or not. */
final class BufferWatcher extends BufferAdapter {

	private static final String LANGUAGE = "padwright";

	private final LocalServer server;
	private final Map<IFileBuffer, OpenText> open = new ConcurrentHashMap<>();

	BufferWatcher(LocalServer server) {
		this.server = server;
	}

	void start() {
		FileBuffers.getTextFileBufferManager().addFileBufferListener(this);
		for (IFileBuffer buffer : FileBuffers.getTextFileBufferManager().getFileBuffers()) {
			bufferCreated(buffer);
		}
	}

	void stop() {
		FileBuffers.getTextFileBufferManager().removeFileBufferListener(this);
		List.copyOf(open.keySet()).forEach(this::bufferDisposed);
	}

	@Override
	public void bufferCreated(IFileBuffer buffer) {
		if (buffer instanceof ITextFileBuffer text) {
			Documents.uri(buffer).ifPresent(uri -> open.computeIfAbsent(buffer, anew -> new OpenText(uri, text.getDocument())));
		}
	}

	@Override
	public void bufferDisposed(IFileBuffer buffer) {
		OpenText text = open.remove(buffer);
		if (text != null) {
			text.close();
		}
	}

	/** A renamed file is another document. */
	@Override
	public void underlyingFileMoved(IFileBuffer buffer, IPath path) {
		bufferDisposed(buffer);
	}

	@Override
	public void underlyingFileDeleted(IFileBuffer buffer) {
		bufferDisposed(buffer);
	}

	/** One text between its opening and its closing. */
	private final class OpenText implements IDocumentListener {

		private final String uri;
		private final IDocument document;
		private int version = 1;

		OpenText(String uri, IDocument document) {
			this.uri = uri;
			this.document = document;
			server.documents().didOpen(
					new DidOpenTextDocumentParams(new TextDocumentItem(uri, LANGUAGE, version, document.get())));
			document.addDocumentListener(this);
		}

		@Override
		public void documentAboutToBeChanged(DocumentEvent event) {
			// Told when it has changed.
		}

		@Override
		public void documentChanged(DocumentEvent event) {
			version++;
			server.documents().didChange(new DidChangeTextDocumentParams(
					new VersionedTextDocumentIdentifier(uri, version),
					List.of(new TextDocumentContentChangeEvent(document.get()))));
		}

		void close() {
			document.removeDocumentListener(this);
			server.documents().didClose(new DidCloseTextDocumentParams(new TextDocumentIdentifier(uri)));
		}
	}
}

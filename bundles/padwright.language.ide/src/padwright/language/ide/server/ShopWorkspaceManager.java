package padwright.language.ide.server;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.common.util.URI;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.eclipse.xtext.ide.server.BuildManager.Buildable;
import org.eclipse.xtext.ide.server.Document;
import org.eclipse.xtext.ide.server.WorkspaceManager;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.validation.Issue;
import org.eclipse.xtext.workspace.IWorkspaceConfig;
import org.eclipse.xtext.xbase.lib.Functions.Function2;
import org.eclipse.xtext.xbase.lib.Procedures.Procedure2;

import com.google.inject.Inject;
import com.google.inject.Singleton;

import padwright.language.ide.words.Messages;

import padwright.language.shop.ShopFolder;

/**
 * Reads the shops only once the client is ready, so that it does not wait for its first answer. Also serves files that
 * no open folder holds, each with the shop around it.
 */
@Singleton
final class ShopWorkspaceManager extends WorkspaceManager {

	@Inject
	private ShopWorkspaceFactory shops;
	private final List<WorkspaceFolder> aroundStrayFiles = new ArrayList<>();
	private boolean open;

	@Override
	protected IWorkspaceConfig createWorkspaceConfig() {
		List<WorkspaceFolder> folders = new ArrayList<>(getWorkspaceFolders());
		folders.addAll(aroundStrayFiles);
		return shops.getWorkspaceConfig(open ? folders : List.of());
	}

	/** From a client that knows of one folder at most, and may have opened a single file without any. */
	@Override
	public void initialize(URI folder, Procedure2<? super URI, ? super Iterable<Issue>> issueAcceptor,
			CancelIndicator cancelled) {
		List<WorkspaceFolder> folders = FileUris.path(folder)
				.map(path -> new WorkspaceFolder(FileUris.text(path), path.toString())).stream().toList();
		initialize(folders, issueAcceptor, cancelled);
	}

	/** Finds the shops and reads all they hold. */
	void open() {
		open = true;
		refreshWorkspaceConfig(CancelIndicator.NullImpl);
	}

	/** Takes all shops away and finds them anew, after a mark of one came or went. */
	void reopen() {
		open = false;
		refreshWorkspaceConfig(CancelIndicator.NullImpl);
		open();
	}

	@Override
	public Buildable didOpen(URI uri, Integer version, String contents) {
		Optional<Path> file = FileUris.path(uri);
		if (file.isPresent() && getProjectConfig(uri) == null) {
			Path shop = ShopFolder.around(file.get());
			aroundStrayFiles.add(new WorkspaceFolder(FileUris.text(shop), shop.toString()));
			refreshWorkspaceConfig(CancelIndicator.NullImpl);
		}
		return super.didOpen(uri, version, contents);
	}

	/** Files in no shop cannot be built, such as a new one that was never saved. */
	@Override
	public Buildable didChangeFiles(List<URI> dirtyFiles, List<URI> deletedFiles) {
		return super.didChangeFiles(inShops(dirtyFiles), inShops(deletedFiles));
	}

	private List<URI> inShops(List<URI> files) {
		return files.stream().filter(this::isInShop).toList();
	}

	boolean isInShop(URI file) {
		return getProjectConfig(file) != null;
	}

	@Override
	public <T> T doRead(URI uri, Function2<? super Document, ? super XtextResource, ? extends T> work) {
		return super.<T>doRead(uri, (document, resource) -> {
			if (resource == null) {
				throw new ResponseErrorException(new ResponseError(ResponseErrorCode.InvalidParams,
						Messages.of("server.noShop", uri), null));
			}
			return work.apply(document, resource);
		});
	}
}

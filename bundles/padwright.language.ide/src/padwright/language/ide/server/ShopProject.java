package padwright.language.ide.server;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.util.IFileSystemScanner;
import org.eclipse.xtext.workspace.IProjectConfig;
import org.eclipse.xtext.workspace.ISourceFolder;
import org.eclipse.xtext.workspace.IWorkspaceConfig;

import padwright.language.files.UnreadableException;
import padwright.language.shop.ShopFolder;

/** One shop folder; its files may name each other. */
final class ShopProject implements IProjectConfig, ISourceFolder {

	private final Path folder;
	private final ShopWorkspace workspace;

	ShopProject(Path folder, ShopWorkspace workspace) {
		this.folder = folder;
		this.workspace = workspace;
	}

	@Override
	public String getName() {
		return folder.toString();
	}

	@Override
	public URI getPath() {
		return FileUris.of(folder).appendSegment("");
	}

	@Override
	public Set<? extends ISourceFolder> getSourceFolders() {
		return Set.of(this);
	}

	@Override
	public ISourceFolder findSourceFolderContaining(URI member) {
		return contains(member) ? this : null;
	}

	@Override
	public boolean contains(URI member) {
		return workspace.findProjectContaining(member) == this;
	}

	/** The documents on disk, those of shops further down left out. */
	@Override
	public List<URI> getAllResources(IFileSystemScanner scanner) {
		try {
			return ShopFolder.documents(folder).stream().map(FileUris::of).filter(this::contains).toList();
		} catch (UnreadableException nothingToRead) {
			return List.of();
		}
	}

	@Override
	public IWorkspaceConfig getWorkspaceConfig() {
		return workspace;
	}
}

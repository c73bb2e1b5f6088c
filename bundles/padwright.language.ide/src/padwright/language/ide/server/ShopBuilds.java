package padwright.language.ide.server;

import java.util.Collection;
import java.util.Set;

import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.ide.server.BuildManager;
import org.eclipse.xtext.ide.server.WorkspaceManager;

/**
 * Forgets files whose shop was closed before their last change was read: such a file cannot be read any more, and would
 * make every later build fail.
 */
final class ShopBuilds extends BuildManager {

	private ShopWorkspaceManager shops;

	@Override
	public void setWorkspaceManager(WorkspaceManager workspace) {
		shops = (ShopWorkspaceManager) workspace;
		super.setWorkspaceManager(workspace);
	}

	@Override
	protected void queue(Set<URI> files, Collection<URI> toRemove, Collection<URI> toAdd) {
		super.queue(files, toRemove, toAdd);
		files.removeIf(file -> !shops.isInShop(file));
	}
}

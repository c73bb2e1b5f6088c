package padwright.language.ide.server;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.xtext.resource.clustering.IResourceClusteringPolicy;

/**
 * Lets go of the documents of a shop once many are loaded. What others need to know of them stays in the index, and what
 * is needed again is read again.
 */
final class FewLoaded implements IResourceClusteringPolicy {

	/** A loaded plan takes a quarter of a megabyte. */
	static final int MOST = 1_000;

	private final int most;

	FewLoaded(int most) {
		this.most = most;
	}

	@Override
	public boolean continueProcessing(ResourceSet loaded, URI next, int alreadyProcessed) {
		return loaded.getResources().size() < most;
	}
}

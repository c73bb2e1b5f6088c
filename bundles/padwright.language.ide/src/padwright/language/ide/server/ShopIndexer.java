package padwright.language.ide.server;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.build.BuildContext;
import org.eclipse.xtext.build.BuildRequest;
import org.eclipse.xtext.build.Indexer;
import org.eclipse.xtext.resource.IResourceDescription;
import org.eclipse.xtext.resource.IResourceDescription.Delta;
import org.eclipse.xtext.resource.impl.ResourceDescriptionsData;

/**
 * Does not ask each of thousands of plans whether it is affected by a change that can affect none: one after which a
 * document gives the same to others as before, as nearly every edit of a plan.
 */
final class ShopIndexer extends Indexer {

	@Override
	public IndexResult computeAndIndexAffected(BuildRequest request, BuildContext context) {
		ResourceDescriptionsData before = context.getOldState().getResourceDescriptions();
		ResourceDescriptionsData after = request.getState().getResourceDescriptions();
		List<Delta> deltas = new ArrayList<>(getDeltasForDeletedResources(request, before, context));
		deltas.addAll(getDeltasForChangedResources(request.getDirtyFiles(), before, context));
		deltas.forEach(after::register);
		Set<Delta> all = new HashSet<>(deltas);
		all.addAll(request.getExternalDeltas());
		if (all.stream().anyMatch(Delta::haveEObjectDescriptionsChanged)) {
			deltas.addAll(getDeltasForChangedResources(affected(all, before, after, context), before, context));
		}
		return new IndexResult(deltas, after);
	}

	/** The documents that did not change themselves, but have to be judged anew. */
	private List<URI> affected(Collection<Delta> changes, ResourceDescriptionsData before,
			ResourceDescriptionsData after, BuildContext context) {
		Set<URI> changed = changes.stream().map(Delta::getUri).collect(Collectors.toSet());
		List<URI> affected = new ArrayList<>();
		for (IResourceDescription document : before.getAllResourceDescriptions()) {
			URI uri = document.getURI();
			if (!changed.contains(uri) && isAffected(document, context.getResourceServiceProvider(uri)
					.getResourceDescriptionManager(), changes, changes, after)) {
				affected.add(uri);
			}
		}
		return affected;
	}
}

package padwright.language.ide.server;

import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.build.BuildRequest;
import org.eclipse.xtext.build.IncrementalBuilder;
import org.eclipse.xtext.resource.IResourceServiceProvider;
import org.eclipse.xtext.xbase.lib.Functions.Function1;

/** Reads and judges documents, of which never more than some are in memory: a shop has thousands of old plans. */
final class ShopBuilder extends IncrementalBuilder {

	@Override
	public Result build(BuildRequest request, Function1<? super URI, ? extends IResourceServiceProvider> languages) {
		return build(request, languages, new FewLoaded(FewLoaded.MOST));
	}
}

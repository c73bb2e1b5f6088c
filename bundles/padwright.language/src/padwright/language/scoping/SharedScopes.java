package padwright.language.scoping;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.xtext.resource.IContainer;
import org.eclipse.xtext.resource.IEObjectDescription;
import org.eclipse.xtext.resource.containers.FilterUriContainer;
import org.eclipse.xtext.scoping.IScope;
import org.eclipse.xtext.scoping.impl.DefaultGlobalScopeProvider;

import com.google.common.base.Predicate;

/** The names that the other files of a shop give. */
public class SharedScopes extends DefaultGlobalScopeProvider {

	@Override
	protected IScope createContainerScopeWithContext(Resource document, IScope parent, IContainer container,
			Predicate<IEObjectDescription> filter, EClass type, boolean ignoreCase) {
		return createContainerScope(parent, new OtherFiles(document.getURI(), container), filter, type, ignoreCase);
	}

	private static final class OtherFiles extends FilterUriContainer {

		private OtherFiles(URI own, IContainer all) {
			super(own, all);
		}

		/** Who is told that there may be some looks for a name, which is fast; to tell for sure, all would be counted. */
		@Override
		public boolean isEmpty() {
			return false;
		}
	}
}

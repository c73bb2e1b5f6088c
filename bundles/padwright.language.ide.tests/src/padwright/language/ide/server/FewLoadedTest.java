package padwright.language.ide.server;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ResourceImpl;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.junit.jupiter.api.Test;

class FewLoadedTest {

	/** Whatever loaded them: documents that others have links to count as those that are read in turn. */
	@Test
	void lettingGoBeginsWhenSoManyAreLoaded() {
		FewLoaded few = new FewLoaded(2);
		ResourceSet loaded = new ResourceSetImpl();
		loaded.getResources().add(new ResourceImpl(URI.createURI("a.plan")));
		assertTrue(few.continueProcessing(loaded, URI.createURI("c.plan"), 5));
		loaded.getResources().add(new ResourceImpl(URI.createURI("b.plan")));
		assertFalse(few.continueProcessing(loaded, URI.createURI("c.plan"), 0));
	}
}

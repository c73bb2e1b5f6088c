package padwright.language.edit;

import java.util.List;
import java.util.stream.StreamSupport;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.xtext.naming.QualifiedName;
import org.eclipse.xtext.resource.IEObjectDescription;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.scoping.IScopeProvider;

/** The names that something in a document can refer to. */
final class ReferenceNames {

	private static final String QUOTE = "\"";

	private ReferenceNames() {
	}

	/** Plain names, in their order; nothing where the document is not read. */
	static List<String> of(EObject element, EReference reference) {
		if (!(element.eResource() instanceof XtextResource document)) {
			return List.of();
		}
		IScopeProvider scopes = document.getResourceServiceProvider().get(IScopeProvider.class);
		return StreamSupport.stream(scopes.getScope(element, reference).getAllElements().spliterator(), false)
				.map(IEObjectDescription::getName).filter(name -> name.getSegmentCount() == 1)
				.map(QualifiedName::getFirstSegment).distinct().toList();
	}

	/** A name without the quotes that it may be written with. */
	static String plain(String written) {
		return written.startsWith(QUOTE) && written.endsWith(QUOTE) && written.length() > 1
				? written.substring(1, written.length() - 1) : written;
	}
}

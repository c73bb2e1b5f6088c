package padwright.language.scoping;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.xtext.resource.ISelectable;
import org.eclipse.xtext.scoping.Scopes;
import org.eclipse.xtext.scoping.impl.ImportNormalizer;
import org.eclipse.xtext.scoping.impl.ImportedNamespaceAwareLocalScopeProvider;
import org.eclipse.xtext.scoping.impl.MultimapBasedSelectable;

import padwright.model.plan.Document;
import padwright.model.stock.Stock;

/**
 * The systems, stocks, plans and articles of a shop by name, those of the document at hand first. Nothing below a system
 * or plan is found here, so that hundreds of rows need not be looked through for each plan that names a stock.
 */
public class SharedElements extends ImportedNamespaceAwareLocalScopeProvider {

	@Override
	protected ISelectable internalGetAllDescriptions(Resource resource) {
		List<EObject> elements = new ArrayList<>();
		for (EObject root : resource.getContents()) {
			elements.add(root);
			if (root instanceof Document document) {
				add(document, elements);
			}
		}
		return new MultimapBasedSelectable(Scopes.scopedElementsFor(elements, getQualifiedNameProvider()));
	}

	private static void add(Document document, List<EObject> elements) {
		for (EObject element : document.eContents()) {
			elements.add(element);
			if (element instanceof Stock stock) {
				elements.addAll(stock.eContents());
			}
		}
	}

	/** The language has no imports, so that nobody need look for them. */
	@Override
	protected List<ImportNormalizer> getImportedNamespaceResolvers(EObject context, boolean ignoreCase) {
		return List.of();
	}
}

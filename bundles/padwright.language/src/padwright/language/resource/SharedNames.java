package padwright.language.resource;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.resource.IEObjectDescription;
import org.eclipse.xtext.resource.impl.DefaultResourceDescriptionStrategy;
import org.eclipse.xtext.util.IAcceptor;

import com.google.inject.Singleton;

import padwright.model.plan.Document;
import padwright.model.stock.Stock;

/**
 * What the other files of a shop can name: systems, stocks and plans, and the articles of a stock by qualified name.
 * Keys are found through their system, so they are left out.
 */
@Singleton
public class SharedNames extends DefaultResourceDescriptionStrategy {

	@Override
	public boolean createEObjectDescriptions(EObject element, IAcceptor<IEObjectDescription> acceptor) {
		if (element instanceof Document) {
			return true;
		}
		super.createEObjectDescriptions(element, acceptor);
		return element instanceof Stock;
	}
}

package padwright.language.ide.index;

import java.util.Map;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.resource.EObjectDescription;
import org.eclipse.xtext.resource.IEObjectDescription;
import org.eclipse.xtext.util.IAcceptor;

import com.google.inject.Singleton;

import padwright.language.resource.SharedNames;
import padwright.model.keysystem.KeySystem;
import padwright.model.stock.Stock;

/**
 * The names that files share, with the text behind them for systems and stocks: a plan has to be judged anew when a
 * cup in its system gets deeper, though no name has changed.
 */
@Singleton
public final class FingerprintedNames extends SharedNames {

	private static final String TEXT = "text";

	@Override
	public boolean createEObjectDescriptions(EObject element, IAcceptor<IEObjectDescription> acceptor) {
		boolean hasText = element instanceof KeySystem || element instanceof Stock;
		return super.createEObjectDescriptions(element, hasText ? named -> acceptor.accept(withText(named)) : acceptor);
	}

	private static IEObjectDescription withText(IEObjectDescription named) {
		INode node = NodeModelUtils.findActualNodeFor(named.getEObjectOrProxy());
		String text = node == null ? "" : node.getText();
		return EObjectDescription.create(named.getName(), named.getEObjectOrProxy(),
				Map.of(TEXT, text.length() + ":" + text.hashCode()));
	}
}

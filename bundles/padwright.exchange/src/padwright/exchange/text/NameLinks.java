package padwright.exchange.text;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.CrossReference;
import org.eclipse.xtext.conversion.IValueConverterService;
import org.eclipse.xtext.linking.impl.LinkingHelper;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.serializer.diagnostic.ISerializationDiagnostic.Acceptor;
import org.eclipse.xtext.serializer.tokens.ICrossReferenceSerializer;

import com.google.inject.Inject;

import padwright.exchange.tree.LinkNames;

/** Writes a link as the name of its target, wherever that stands: a document from outside comes without its shop. */
class NameLinks implements ICrossReferenceSerializer {

	@Inject
	private LinkingHelper links;

	@Inject
	private IValueConverterService converters;

	@Override
	public boolean isValid(EObject context, CrossReference reference, EObject target, INode node, Acceptor errors) {
		return true;
	}

	@Override
	public String serializeCrossRef(EObject context, CrossReference reference, EObject target, INode node,
			Acceptor errors) {
		return converters.toString(LinkNames.name(context, target), links.getRuleNameFrom(reference));
	}
}

package padwright.exchange.xmi;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.xml.sax.SAXParseException;

import padwright.exchange.tree.ExchangeException;
import padwright.model.plan.Document;

/**
 * Documents as XMI for tools of EMF. A file is complete: behind the document stand all others that it draws on, so that
 * no link leads out of the file; and none that does is followed.
 */
public final class XmiExchange {

	private static final URI HERE = URI.createURI("padwright:/exchange.xmi");

	private XmiExchange() {
	}

	/**
	 * The XMI text of a document and all that it draws on.
	 *
	 * @throws ExchangeException if it names something that is nowhere
	 */
	public static String write(Document document) throws ExchangeException {
		Collection<EObject> copies = EcoreUtil.copyAll(complete(document));
		XMLResource resource = new ClosedXmi(HERE);
		resource.getContents().addAll(copies);
		ByteArrayOutputStream bytes = new ByteArrayOutputStream();
		try {
			resource.save(bytes, Map.of(XMLResource.OPTION_ENCODING, StandardCharsets.UTF_8.name()));
		} catch (IOException impossibleInMemory) {
			throw new UncheckedIOException(impossibleInMemory);
		}
		return bytes.toString(StandardCharsets.UTF_8);
	}

	/** The document and all that it draws on, in the order in which they are named. */
	private static List<EObject> complete(Document document) throws ExchangeException {
		Set<EObject> found = new LinkedHashSet<>(List.of(document));
		List<EObject> inOrder = new ArrayList<>(found);
		for (int index = 0; index < inOrder.size(); index++) {
			for (EObject root : drawnOn(inOrder.get(index))) {
				if (found.add(root)) {
					inOrder.add(root);
				}
			}
		}
		return inOrder;
	}

	private static List<EObject> drawnOn(EObject document) throws ExchangeException {
		List<EObject> roots = new ArrayList<>();
		for (TreeIterator<EObject> parts = document.eAllContents(); parts.hasNext();) {
			for (EObject target : parts.next().eCrossReferences()) {
				if (target.eIsProxy()) {
					throw new ExchangeException("it names something that is nowhere; see check");
				}
				roots.add(EcoreUtil.getRootContainer(target));
			}
		}
		return roots;
	}

	/**
	 * The first document of an XMI text; what it draws on stands behind it.
	 *
	 * @throws ExchangeException if the text is not XMI of our model, or a link leads out of it
	 */
	public static Document read(String text) throws ExchangeException {
		ClosedXmi resource = new ClosedXmi(HERE);
		try {
			resource.load(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), Map.of());
		} catch (IOException failed) {
			throw wrong(resource, failed);
		}
		if (resource.getContents().isEmpty() || !(resource.getContents().get(0) instanceof Document document)) {
			throw new ExchangeException(1, "the first thing in it is no plan:Document");
		}
		if (!EcoreUtil.ProxyCrossReferencer.find(resource).isEmpty()) {
			throw new ExchangeException(lineOfLink(text),
					"a link leads out of this file and is not followed; export it with all that it draws on");
		}
		return document;
	}

	private static ExchangeException wrong(Resource resource, IOException failure) {
		if (failure.getCause() instanceof SAXParseException broken) {
			return new ExchangeException(broken.getLineNumber(), "this is not XML that is read: " + broken.getMessage());
		}
		if (!resource.getErrors().isEmpty()) {
			Resource.Diagnostic first = resource.getErrors().get(0);
			return new ExchangeException(first.getLine(), "this is not XMI of this model: " + first.getMessage());
		}
		return new ExchangeException("this is not XMI: " + failure.getMessage());
	}

	/** The first line with a link that does not begin in this file. */
	private static int lineOfLink(String text) {
		String[] lines = text.split("\n", -1);
		for (int index = 0; index < lines.length; index++) {
			if (lines[index].matches(".*\\bhref=\"[^#\"].*")) {
				return index + 1;
			}
		}
		return 0;
	}
}

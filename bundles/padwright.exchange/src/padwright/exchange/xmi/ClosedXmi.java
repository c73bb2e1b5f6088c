package padwright.exchange.xmi;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;

import javax.xml.XMLConstants;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EFactory;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.impl.EPackageRegistryImpl;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.impl.ExtensibleURIConverterImpl;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.xmi.XMLHelper;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.emf.ecore.xmi.impl.XMIHelperImpl;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;

import padwright.exchange.tree.Features;
import padwright.exchange.tree.Values;

/** An XMI resource that knows our packages alone, and opens nothing else: no document type, entity, schema or link. */
final class ClosedXmi extends XMIResourceImpl {

	private static final Map<String, Boolean> CLOSED = Map.of(XMLConstants.FEATURE_SECURE_PROCESSING, true,
			"http://apache.org/xml/features/disallow-doctype-decl", true,
			"http://xml.org/sax/features/external-general-entities", false,
			"http://xml.org/sax/features/external-parameter-entities", false);

	/** Knows no other resource than those put into it. */
	private static final class Alone extends ResourceSetImpl {

		private Alone() {
			EPackage.Registry packages = new EPackageRegistryImpl();
			Features.PACKAGES.forEach(each -> packages.put(each.getNsURI(), each));
			setPackageRegistry(packages);
			setURIConverter(new ExtensibleURIConverterImpl(List.of(), List.of()) {
				@Override
				public InputStream createInputStream(URI uri, Map<?, ?> options) throws IOException {
					throw new IOException("nothing but the file itself is read");
				}
			});
		}

		@Override
		public Resource getResource(URI uri, boolean loadOnDemand) {
			return super.getResource(uri, false);
		}
	}

	ClosedXmi(URI uri) {
		super(uri);
		new Alone().getResources().add(this);
		getDefaultLoadOptions().put(XMLResource.OPTION_PARSER_FEATURES, CLOSED);
	}

	/** Nothing, where the framework would fail over a path that has no sense here. */
	@Override
	public EObject getEObject(String path) {
		try {
			return super.getEObject(path);
		} catch (RuntimeException senseless) {
			return null;
		}
	}

	@Override
	protected XMLHelper createXMLHelper() {
		return new XMIHelperImpl(this) {
			@Override
			protected Object createFromString(EFactory factory, EDataType type, String text) {
				return Values.value(type, text);
			}
		};
	}
}

package padwright.exchange.text;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;

import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;
import org.eclipse.xtext.serializer.ISerializer;

import com.google.inject.Guice;
import com.google.inject.Inject;
import com.google.inject.Injector;
import com.google.inject.Provider;

import padwright.exchange.json.JsonExchange;
import padwright.exchange.tree.Branch;
import padwright.exchange.tree.ExchangeException;
import padwright.exchange.tree.ModelToTree;
import padwright.language.formatting2.DocumentFormatter;
import padwright.model.plan.Document;

/** Documents from outside as text of the language. */
public final class DocumentText {

	/** The language with links as names, made on first use. */
	private static final class Writing {
		private static final Injector SERVICES = Guice.createInjector(new NameLinksModule());
	}

	private static final URI ANYWHERE = URI.createURI("padwright:/imported.plan");

	@Inject
	private Provider<XtextResourceSet> resourceSets;

	@Inject
	private DocumentFormatter formatter;

	@Inject
	private ModelToTree trees;

	/**
	 * The text of a document, laid out. Read again it is the same document, or there is no text.
	 *
	 * @throws ExchangeException if the document lacks something that the language asks for
	 */
	public String of(Document document) throws ExchangeException {
		XtextResource read = read(serialized(document));
		if (read.getParseResult().hasSyntaxErrors() || read.getContents().isEmpty()
				|| !same(document, (Document) read.getContents().get(0))) {
			throw new ExchangeException("the language has no words for what it holds; is a name or a number not one?");
		}
		return formatter.format(read);
	}

	private static String serialized(Document document) throws ExchangeException {
		XtextResource resource = Writing.SERVICES.getInstance(XtextResource.class);
		resource.setURI(ANYWHERE);
		resource.getContents().add(document);
		try {
			return Writing.SERVICES.getInstance(ISerializer.class).serialize(document);
		} catch (RuntimeException lacksSomething) {
			throw new ExchangeException("the language cannot say it: " + lacksSomething.getMessage());
		}
	}

	private XtextResource read(String text) {
		XtextResource resource = (XtextResource) resourceSets.get().createResource(ANYWHERE);
		try {
			resource.load(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
					Map.of(XtextResource.OPTION_ENCODING, StandardCharsets.UTF_8.name()));
		} catch (IOException impossibleInMemory) {
			throw new UncheckedIOException(impossibleInMemory);
		}
		return resource;
	}

	private boolean same(Document expected, Document actual) {
		return text(trees.tree(expected)).equals(text(trees.tree(actual)));
	}

	private static String text(Branch tree) {
		return JsonExchange.write(tree);
	}
}

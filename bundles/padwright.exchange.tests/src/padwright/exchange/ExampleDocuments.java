package padwright.exchange;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;

import com.google.inject.Injector;

import padwright.language.PadwrightStandaloneSetup;
import padwright.language.files.UnreadableException;
import padwright.language.shop.ShopFolder;
import padwright.model.plan.Document;

/** The documents of the example shop and one that says all that the language has words for. */
public final class ExampleDocuments {

	public static final Injector LANGUAGE = PadwrightStandaloneSetup.doSetup();
	/** Tests run in the folder of their own bundle. */
	private static final Path SHOP = Path.of("..", "..", "examples", "shop");
	private static final String EVERYTHING = "everything.plan";
	private static final Map<String, String> TEXTS = texts();

	private ExampleDocuments() {
	}

	/** Names of the documents. */
	public static List<String> names() {
		return List.copyOf(TEXTS.keySet());
	}

	/** One document, in a shop with all that it draws on. */
	public static Document document(String name) {
		return with(name, TEXTS.get(name));
	}

	/** A document of this text in place of that of a name, in a shop with all that others draw on. */
	public static Document with(String name, String text) {
		XtextResourceSet shop = LANGUAGE.getInstance(XtextResourceSet.class);
		load(shop, name, text);
		TEXTS.forEach((other, content) -> {
			if (!other.endsWith(".plan") && !other.equals(name)) {
				load(shop, other, content);
			}
		});
		XtextResource resource = (XtextResource) shop.getResource(uri(name), false);
		if (resource.getParseResult().hasSyntaxErrors()) {
			throw new AssertionError(resource.getErrors().get(0).getMessage() + " in:\n" + text);
		}
		return (Document) resource.getContents().get(0);
	}

	private static Map<String, String> texts() {
		try {
			Map<String, String> texts = new TreeMap<>();
			for (Path file : ShopFolder.documents(SHOP)) {
				texts.put(file.getFileName().toString(), Files.readString(file));
			}
			texts.put(EVERYTHING, new String(ExampleDocuments.class.getResourceAsStream(EVERYTHING).readAllBytes(),
					StandardCharsets.UTF_8));
			return texts;
		} catch (IOException | UnreadableException missing) {
			throw new AssertionError(missing);
		}
	}

	private static void load(XtextResourceSet shop, String name, String text) {
		try {
			shop.createResource(uri(name)).load(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
					Map.of(XtextResource.OPTION_ENCODING, StandardCharsets.UTF_8.name()));
		} catch (IOException impossibleInMemory) {
			throw new AssertionError(impossibleInMemory);
		}
	}

	private static URI uri(String name) {
		return URI.createURI("shop:/" + name);
	}
}

package padwright.language.shop;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.validation.IResourceValidator;

import com.google.inject.Injector;

import padwright.language.files.SourceText;
import padwright.language.files.UnreadableException;
import padwright.language.messages.Messages;
import padwright.model.plan.Document;

/** The documents of a shop, loaded together so that they can name each other. For one thread at a time. */
public final class Shop {

	private final IResourceValidator validator;
	private final XtextResourceSet resources;
	private final Map<Path, XtextResource> loaded = new LinkedHashMap<>();
	private final Map<Path, String> texts = new LinkedHashMap<>();
	private final Map<Path, String> unreadable = new LinkedHashMap<>();

	private Shop(Injector language) {
		validator = language.getInstance(IResourceValidator.class);
		resources = language.getInstance(XtextResourceSet.class);
	}

	/** Loads {@code files}; those that cannot be read are remembered as such. */
	public static Shop open(Injector language, Collection<Path> files) {
		return open(language, files, Map.of());
	}

	/** As {@link #open(Injector, Collection)}, with other texts for some files than they hold. */
	public static Shop open(Injector language, Collection<Path> files, Map<Path, String> otherTexts) {
		Shop shop = new Shop(language);
		files.forEach(file -> shop.load(file, otherTexts.get(file)));
		return shop;
	}

	private void load(Path file, String otherText) {
		try {
			String text = otherText == null ? SourceText.read(file) : otherText;
			XtextResource resource = (XtextResource) resources
					.createResource(URI.createFileURI(file.toAbsolutePath().toString()));
			resource.load(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
					Map.of(XtextResource.OPTION_ENCODING, StandardCharsets.UTF_8.name()));
			loaded.put(file, resource);
			texts.put(file, text);
		} catch (UnreadableException reason) {
			unreadable.put(file, reason.getMessage());
		} catch (IOException failed) {
			unreadable.put(file, Messages.of("file.unread"));
		} catch (StackOverflowError tooDeep) {
			unreadable.put(file, ResourceFindings.tooDeep());
		}
	}

	/** All files, those that could not be read too. */
	public Set<Path> files() {
		Set<Path> files = new TreeSet<>(loaded.keySet());
		files.addAll(unreadable.keySet());
		return files;
	}

	/** Why a file cannot be used at all, as in "is not a text file"; empty if it can. */
	public Optional<String> whyUnreadable(Path file) {
		return Optional.ofNullable(unreadable.get(file));
	}

	/** The text of a file that could be read. */
	public String text(Path file) {
		return texts.get(file);
	}

	/** The resource of a file that could be read. */
	public XtextResource resource(Path file) {
		return loaded.get(file);
	}

	/** The content of a file that could be read; nothing for an empty file. */
	public Optional<Document> document(Path file) {
		return loaded.get(file).getContents().stream().filter(Document.class::isInstance).map(Document.class::cast)
				.findFirst();
	}

	/** All findings in a file, in the order of its lines. */
	public List<ShopFinding> findings(Path file) {
		if (unreadable.containsKey(file)) {
			return List.of(ResourceFindings.unreadable(file, unreadable.get(file)));
		}
		return ResourceFindings.of(validator, file, loaded.get(file), CancelIndicator.NullImpl);
	}
}

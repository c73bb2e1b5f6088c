package padwright.language.shop;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.diagnostics.Severity;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.validation.CheckMode;
import org.eclipse.xtext.validation.IResourceValidator;
import org.eclipse.xtext.validation.Issue;

import com.google.inject.Injector;

import padwright.language.files.SourceText;
import padwright.language.files.UnreadableException;
import padwright.model.plan.Document;
import padwright.workup.checks.IssueCodes;

/** The documents of a shop, loaded together so that they can name each other. For one thread at a time. */
public final class Shop {

	private static final String TOO_DEEP = "is nested too deeply; take parentheses away";

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
		Shop shop = new Shop(language);
		files.forEach(shop::load);
		return shop;
	}

	private void load(Path file) {
		try {
			String text = SourceText.read(file);
			XtextResource resource = (XtextResource) resources
					.createResource(URI.createFileURI(file.toAbsolutePath().toString()));
			resource.load(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
					Map.of(XtextResource.OPTION_ENCODING, StandardCharsets.UTF_8.name()));
			loaded.put(file, resource);
			texts.put(file, text);
		} catch (UnreadableException reason) {
			unreadable.put(file, reason.getMessage());
		} catch (IOException failed) {
			unreadable.put(file, "cannot be read");
		} catch (StackOverflowError tooDeep) {
			unreadable.put(file, TOO_DEEP);
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
			return List.of(unreadable(file, unreadable.get(file)));
		}
		try {
			List<ShopFinding> findings = new ArrayList<>();
			validator.validate(loaded.get(file), CheckMode.ALL, CancelIndicator.NullImpl)
					.forEach(issue -> findings.add(finding(file, issue)));
			findings.sort(Comparator.comparingInt(ShopFinding::line).thenComparingInt(ShopFinding::column));
			return findings;
		} catch (StackOverflowError tooDeep) {
			return List.of(unreadable(file, TOO_DEEP));
		}
	}

	private static ShopFinding unreadable(Path file, String why) {
		return new ShopFinding(file, 1, 1, padwright.workup.checks.Severity.ERROR, IssueCodes.UNREADABLE,
				"This file " + why + ".");
	}

	private static ShopFinding finding(Path file, Issue issue) {
		return new ShopFinding(file, number(issue.getLineNumber()), number(issue.getColumn()),
				severity(issue.getSeverity()), issue.getCode(), issue.getMessage());
	}

	private static int number(Integer number) {
		return number == null ? 1 : Math.max(1, number);
	}

	private static padwright.workup.checks.Severity severity(Severity severity) {
		return switch (severity) {
		case ERROR -> padwright.workup.checks.Severity.ERROR;
		case WARNING -> padwright.workup.checks.Severity.WARNING;
		default -> padwright.workup.checks.Severity.INFO;
		};
	}
}

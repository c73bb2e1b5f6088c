package padwright.language;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.validation.CheckMode;
import org.eclipse.xtext.validation.IResourceValidator;
import org.eclipse.xtext.validation.Issue;

import com.google.inject.Injector;

import padwright.model.plan.Document;
import padwright.workup.checks.Severity;

/** The documents of a shop, in memory. */
public final class TestShop {

	public static final Injector LANGUAGE = PadwrightStandaloneSetup.doSetup();

	private final XtextResourceSet resources = LANGUAGE.getInstance(XtextResourceSet.class);

	/** A shop with one document. */
	public static TestShop of(String name, String text) {
		return new TestShop().with(name, text);
	}

	/** Adds a document. */
	public TestShop with(String name, String text) {
		try {
			resources.createResource(uri(name)).load(
					new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
					Map.of(XtextResource.OPTION_ENCODING, StandardCharsets.UTF_8.name()));
			return this;
		} catch (IOException impossibleInMemory) {
			throw new UncheckedIOException(impossibleInMemory);
		}
	}

	private static URI uri(String name) {
		return URI.createURI("shop:/" + name);
	}

	public XtextResource resource(String name) {
		return (XtextResource) resources.getResource(uri(name), false);
	}

	public Document document(String name) {
		return (Document) resource(name).getContents().get(0);
	}

	/** All findings in a document. */
	public List<Mark> findings(String name) {
		return issues(name).stream().map(TestShop::mark).toList();
	}

	/** The words of all findings of a kind in a document. */
	public List<String> messages(String name, String code) {
		return issues(name).stream().filter(issue -> issue.getCode().equals(code)).map(Issue::getMessage).toList();
	}

	private List<Issue> issues(String name) {
		return LANGUAGE.getInstance(IResourceValidator.class)
				.validate(resource(name), CheckMode.ALL, CancelIndicator.NullImpl);
	}

	private static Mark mark(Issue issue) {
		return new Mark(issue.getOffset(), issue.getLength(), Severity.valueOf(issue.getSeverity().name()),
				issue.getCode());
	}
}

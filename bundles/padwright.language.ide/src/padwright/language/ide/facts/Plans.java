package padwright.language.ide.facts;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.xtext.resource.XtextResource;

import padwright.model.keysystem.KeySystem;
import padwright.model.plan.Document;
import padwright.model.plan.Plan;

/** The plans in a document, and its key systems. */
public final class Plans {

	private Plans() {
	}

	/** In the order of the text; none in a document of systems or stock, or without any content. */
	public static List<Plan> in(XtextResource resource) {
		return documents(resource).flatMap(content -> content.getPlans().stream()).toList();
	}

	/** In the order of the text; none in a document of plans or stock, or without any content. */
	public static List<KeySystem> systemsIn(XtextResource resource) {
		return documents(resource).flatMap(content -> content.getSystems().stream()).toList();
	}

	private static Stream<Document> documents(XtextResource resource) {
		return resource.getContents().stream().filter(Document.class::isInstance).map(Document.class::cast);
	}
}

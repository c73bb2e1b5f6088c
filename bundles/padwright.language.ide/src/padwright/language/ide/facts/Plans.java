package padwright.language.ide.facts;

import java.util.List;

import org.eclipse.xtext.resource.XtextResource;

import padwright.model.plan.Document;
import padwright.model.plan.Plan;

/** The plans in a document. */
public final class Plans {

	private Plans() {
	}

	/** In the order of the text; none in a document of systems or stock, or without any content. */
	public static List<Plan> in(XtextResource resource) {
		return resource.getContents().stream().filter(Document.class::isInstance).map(Document.class::cast)
				.flatMap(content -> content.getPlans().stream()).toList();
	}
}

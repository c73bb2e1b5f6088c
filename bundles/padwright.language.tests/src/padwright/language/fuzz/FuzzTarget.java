package padwright.language.fuzz;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;

import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.validation.CheckMode;
import org.eclipse.xtext.validation.IResourceValidator;
import org.eclipse.xtext.validation.Issue;

import padwright.language.Examples;
import padwright.language.TestShop;
import padwright.language.edit.SolutionEdits;
import padwright.language.edit.TextEdit;
import padwright.language.formatting2.DocumentFormatter;
import padwright.language.merge.DocumentMerge;
import padwright.language.merge.MergeResult;
import padwright.model.plan.Document;
import padwright.model.plan.Plan;
import padwright.workup.cautions.Cautions;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.PlanSolver;
import padwright.workup.solve.WrittenAnswers;

/** Does with a document all that can be done with it, and says what went wrong. */
final class FuzzTarget {


	private final XtextResourceSet shop = TestShop.LANGUAGE.getInstance(XtextResourceSet.class);

	FuzzTarget() throws IOException {
		for (var example : Examples.documents(Examples.TEMPLATES)) {
			if (!example.toString().endsWith(".plan")) {
				load(Examples.name(example), Examples.text(example));
			}
		}
	}

	private XtextResource load(String name, String text) throws IOException {
		XtextResource resource = (XtextResource) shop.createResource(URI.createURI("shop:/" + name));
		resource.load(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
				Map.of(XtextResource.OPTION_ENCODING, StandardCharsets.UTF_8.name()));
		return resource;
	}

	/** @throws AssertionError if something is not as it should be; other failures come as they are */
	void use(FuzzCase fuzz) throws IOException {
		XtextResource resource = load(fuzz.name(), fuzz.text());
		try {
			require(resource.getParseResult().getRootNode().getText().equals(fuzz.text()), "the text is not kept");
			TestShop.LANGUAGE.getInstance(IResourceValidator.class)
					.validate(resource, CheckMode.ALL, CancelIndicator.NullImpl).forEach(FuzzTarget::judge);
			layOut(resource, fuzz);
			merge(fuzz.text());
			for (var root : resource.getContents()) {
				((Document) root).getPlans().forEach(plan -> solve(plan, fuzz.text()));
			}
		} finally {
			shop.getResources().remove(resource);
		}
	}

	private static void judge(Issue issue) {
		require(issue.getMessage() != null && !issue.getMessage().contains("Exception")
				&& !issue.getMessage().contains("overflow"), "says: " + issue.getMessage());
		require(issue.getCode() != null && issue.getCode().matches("[a-z-]+"), "code " + issue.getCode() + ": "
				+ issue.getMessage());
		require(issue.getLineNumber() != null && issue.getLineNumber() > 0, "no line: " + issue.getMessage());
	}

	private void layOut(XtextResource resource, FuzzCase fuzz) throws IOException {
		DocumentFormatter formatter = TestShop.LANGUAGE.getInstance(DocumentFormatter.class);
		String once = formatter.format(resource);
		require(letters(once).equals(letters(fuzz.text())), "laying out changes more than blanks");
		XtextResource again = load("again-" + fuzz.name(), once);
		try {
			require(formatter.format(again).equals(once), "laying out twice is not as once");
			require(again.getParseResult().hasSyntaxErrors() == resource.getParseResult().hasSyntaxErrors(),
					"laying out makes or mends errors");
		} finally {
			shop.getResources().remove(again);
		}
	}

	private static String letters(String text) {
		return text.replaceAll("[\\s\\u00A0\\uFEFF]+", "");
	}

	private static void merge(String text) {
		DocumentMerge merge = TestShop.LANGUAGE.getInstance(DocumentMerge.class);
		String edited = text.replaceFirst("15\\b", "14");
		String other = text.replaceFirst("(?s)(.*)15\\b", "$114.5");
		MergeResult merged = merge.merge(text, edited, other);
		require(merged.equals(merge.merge(text, edited, other)), "merging twice gives two results");
		require(merge.merge(text, edited, edited).text().equals(edited), "the same edit twice is not that edit");
	}

	private static void solve(Plan plan, String text) {
		ServicePlan service = new ServicePlan(plan);
		TextEdit.apply(SolutionEdits.of(PlanSolver.solve(service, WrittenAnswers.REPLACE, job -> {
		}), WrittenAnswers.REPLACE), text);
		Cautions.of(service);
	}

	private static void require(boolean holds, String otherwise) {
		if (!holds) {
			throw new AssertionError(otherwise);
		}
	}
}

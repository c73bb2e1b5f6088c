package padwright.language.shop;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.xtext.diagnostics.Severity;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.validation.CheckMode;
import org.eclipse.xtext.validation.IResourceValidator;
import org.eclipse.xtext.validation.Issue;

import padwright.language.messages.Messages;

import padwright.workup.checks.IssueCodes;

/** The findings in one loaded file, with their places. */
public final class ResourceFindings {

	private ResourceFindings() {
	}

	/** All findings in a file, in the order of their places; those of one place the gravest first. */
	public static List<ShopFinding> of(IResourceValidator validator, Path file, Resource resource,
			CancelIndicator cancelled) {
		try {
			List<ShopFinding> findings = new ArrayList<>();
			validator.validate(resource, CheckMode.ALL, cancelled).forEach(issue -> findings.add(finding(file, issue)));
			findings.sort(ShopFinding.ORDER);
			return findings;
		} catch (StackOverflowError tooDeep) {
			return List.of(unreadable(file, tooDeep()));
		}
	}

	/** Why a file with a {@link StackOverflowError} cannot be used. */
	public static String tooDeep() {
		return Messages.of("file.tooDeep");
	}

	/** The one finding in a file that cannot be used at all, for a reason as in "is not a text file". */
	public static ShopFinding unreadable(Path file, String why) {
		return new ShopFinding(file, 1, 1, padwright.workup.checks.Severity.ERROR, IssueCodes.UNREADABLE,
				Messages.of("file.unreadable", why));
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

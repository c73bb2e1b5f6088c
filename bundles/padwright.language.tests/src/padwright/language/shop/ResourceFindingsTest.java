package padwright.language.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

import org.eclipse.xtext.diagnostics.Severity;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.validation.Issue;
import org.junit.jupiter.api.Test;

class ResourceFindingsTest {

	private static Issue issue(int line, int column, Severity severity, String code, String message) {
		Issue.IssueImpl issue = new Issue.IssueImpl();
		issue.setLineNumber(line);
		issue.setColumn(column);
		issue.setSeverity(severity);
		issue.setCode(code);
		issue.setMessage(message);
		return issue;
	}

	@Test
	void theOrderDoesNotFollowThatOfTheChecks() {
		List<Issue> issues = List.of(issue(1, 2, Severity.ERROR, null, "syntax"),
				issue(1, 2, Severity.ERROR, "name.duplicate", "a"), issue(1, 2, Severity.ERROR, "name.duplicate", "b"),
				issue(1, 2, Severity.WARNING, "kind.misplaced", "c"), issue(1, 3, Severity.ERROR, "a", "d"),
				issue(2, 1, Severity.ERROR, "a", "e"));
		List<Issue> mixed = new ArrayList<>(issues);
		for (int seed = 0; seed < 20; seed++) {
			Collections.shuffle(mixed, new Random(seed));
			assertEquals(issues.stream().map(Issue::getMessage).toList(), ResourceFindings
					.of((resource, mode, cancelled) -> mixed, Path.of("x.plan"), null, CancelIndicator.NullImpl).stream()
					.map(ShopFinding::message).toList());
		}
	}
}

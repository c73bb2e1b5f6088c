package padwright.language.ide.server;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.build.BuildRequest;
import org.eclipse.xtext.build.IncrementalBuilder;
import org.eclipse.xtext.diagnostics.Severity;
import org.eclipse.xtext.ide.server.ProjectManager;
import org.eclipse.xtext.resource.IResourceDescription;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.validation.Issue;

import com.google.inject.Inject;

import padwright.language.shop.ResourceFindings;
import padwright.workup.checks.IssueCodes;

/**
 * What is known of one shop. While much of it is read the client sees how far that has come; where it stops it, all
 * names are known all the same, and the documents left are judged as they are opened or changed.
 */
final class ShopContents extends ProjectManager {

	/** Fewer are read before anybody could look. */
	static final int MANY = 100;

	@Inject
	private LongWork work;
	@Inject
	private ShopFiles files;
	private Optional<WorkProgress> progress = Optional.empty();

	@Override
	public IncrementalBuilder.Result doBuild(List<URI> changed, List<URI> deleted,
			List<IResourceDescription.Delta> others, CancelIndicator cancelled) {
		if (changed.size() < MANY) {
			return super.doBuild(changed, deleted, others, cancelled);
		}
		progress = work.begin("Checking " + getBaseDir().trimSegments(1).lastSegment(), changed.size());
		try {
			return super.doBuild(changed, deleted, others, cancelled);
		} finally {
			progress.ifPresent(WorkProgress::close);
			progress = Optional.empty();
		}
	}

	@Override
	protected BuildRequest newBuildRequest(List<URI> changed, List<URI> deleted,
			List<IResourceDescription.Delta> others, CancelIndicator cancelled) {
		BuildRequest request = super.newBuildRequest(changed, deleted, others, cancelled);
		var told = request.getAfterValidate();
		request.setAfterValidate((document, issues) -> {
			progress.ifPresent(shown -> {
				shown.step(URI.decode(document.lastSegment()));
				request.setIndexOnly(shown.isStopped());
			});
			return told.afterValidate(document, files.whyUnreadable(document).<Iterable<Issue>>map(
					reason -> List.of(unreadable(document, reason))).orElse(issues));
		});
		return request;
	}

	private static Issue unreadable(URI document, String reason) {
		Issue.IssueImpl issue = new Issue.IssueImpl();
		issue.setUriToProblem(document);
		issue.setSeverity(Severity.ERROR);
		issue.setCode(IssueCodes.UNREADABLE);
		issue.setMessage(ResourceFindings.unreadable(Path.of(document.toFileString()), reason).message());
		issue.setLineNumber(1);
		issue.setColumn(1);
		issue.setLineNumberEnd(1);
		issue.setColumnEnd(1);
		return issue;
	}
}

package padwright.workbench.session;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.resources.WorkspaceJob;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.PublishDiagnosticsParams;

import padwright.workbench.Messages;
import padwright.workbench.prefs.Preferences;

/** Shows what the server finds as markers of the files; the newest findings of a file replace those before. */
final class FindingMarkers extends WorkspaceJob {

	private final Map<String, List<Diagnostic>> waiting = new ConcurrentHashMap<>();
	private final Map<String, List<Diagnostic>> newest = new ConcurrentHashMap<>();

	FindingMarkers() {
		super(Messages.get("session.findings"));
		setRule(ResourcesPlugin.getWorkspace().getRuleFactory().markerRule(ResourcesPlugin.getWorkspace().getRoot()));
		setPriority(Job.SHORT);
		setSystem(true);
		Preferences.onShownSeverities(this::showAll);
	}

	private void showAll() {
		waiting.putAll(newest);
		schedule();
	}

	void show(PublishDiagnosticsParams findings) {
		newest.put(findings.getUri(), findings.getDiagnostics());
		waiting.put(findings.getUri(), findings.getDiagnostics());
		schedule();
	}

	@Override
	public IStatus runInWorkspace(IProgressMonitor monitor) {
		for (String uri : List.copyOf(waiting.keySet())) {
			List<Diagnostic> findings = waiting.remove(uri);
			Optional<IFile> file = Documents.file(uri).filter(IFile::exists);
			if (findings != null && file.isPresent()) {
				show(file.get(), findings);
			}
		}
		return Status.OK_STATUS;
	}

	/** A file may go at any moment; the findings of the others are shown all the same. */
	private static void show(IFile file, List<Diagnostic> findings) {
		try {
			replace(file, findings);
		} catch (CoreException failed) {
			if (file.exists()) {
				ILog.of(FindingMarkers.class).log(failed.getStatus());
			}
		}
	}

	private static void replace(IFile file, List<Diagnostic> findings) throws CoreException {
		file.deleteMarkers(Finding.MARKER, false, IResource.DEPTH_ZERO);
		if (findings.isEmpty()) {
			return;
		}
		IDocument text = Documents.open(file).orElseGet(() -> WorkspaceEdits.onDisk(file));
		for (Diagnostic finding : findings) {
			if (Preferences.shows(finding.getSeverity())) {
				file.createMarker(Finding.MARKER, attributes(finding, text));
			}
		}
	}

	private static Map<String, Object> attributes(Diagnostic finding, IDocument text) {
		IRegion region = Positions.region(text, finding.getRange());
		return Map.of(IMarker.MESSAGE, finding.getMessage().getLeft(),
				IMarker.SEVERITY, severity(finding.getSeverity()),
				IMarker.LINE_NUMBER, finding.getRange().getStart().getLine() + 1,
				IMarker.CHAR_START, region.getOffset(),
				IMarker.CHAR_END, region.getOffset() + region.getLength(),
				Finding.ATTRIBUTE, Finding.text(finding));
	}

	private static int severity(DiagnosticSeverity severity) {
		return switch (severity) {
			case Error -> IMarker.SEVERITY_ERROR;
			case Warning -> IMarker.SEVERITY_WARNING;
			default -> IMarker.SEVERITY_INFO;
		};
	}
}

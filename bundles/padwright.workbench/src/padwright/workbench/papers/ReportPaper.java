package padwright.workbench.papers;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.ui.IWorkbenchPage;

import padwright.paper.page.PaperSize;
import padwright.paper.report.ReportPages;
import padwright.workup.report.Report;

/** Draws a report as pages. */
public final class ReportPaper extends PaperJob {

	private final Report report;

	public ReportPaper(Report report, IWorkbenchPage page) {
		super(report.title(), page);
		this.report = report;
	}

	@Override
	protected Pages draw(PaperSize size, IProgressMonitor monitor) {
		return new Pages(report.title().replaceAll("[^\\p{L}\\p{N}]+", "-"), report.title(),
				new ReportPages(report, size).pages());
	}
}

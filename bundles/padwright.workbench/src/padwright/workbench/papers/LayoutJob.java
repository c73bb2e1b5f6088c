package padwright.workbench.papers;

import java.util.Optional;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.ui.IWorkbenchPage;

import padwright.model.keysystem.KeySystem;
import padwright.paper.page.PaperSize;
import padwright.paper.sheet.LayoutDrawing;
import padwright.paper.sheet.LayoutSheet;
import padwright.paper.sheet.LayoutSheetPages;
import padwright.paper.system.SystemSheet;
import padwright.workbench.Messages;

/** Draws the key-layout sheet of a system. */
final class LayoutJob extends PaperJob {

	private final KeySystem system;

	LayoutJob(KeySystem system, IWorkbenchPage page) {
		super(Messages.get("papers.layout"), page);
		this.system = system;
	}

	@Override
	protected Pages draw(PaperSize size, IProgressMonitor monitor) {
		LayoutSheet sheet = SystemSheet.of(system, Optional.empty(), Optional.empty());
		return new Pages(system.getName() + "-key-layout", sheet.title(), new LayoutSheetPages(sheet, size).pages(),
				Optional.of(LayoutDrawing.of(sheet)));
	}
}

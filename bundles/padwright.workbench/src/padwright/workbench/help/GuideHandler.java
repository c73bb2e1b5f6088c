package padwright.workbench.help;

import java.util.Map;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.resources.IFile;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

import padwright.workbench.findings.FindingsView;
import padwright.workbench.inspector.InspectorView;
import padwright.workbench.reports.ReportView;
import padwright.workbench.views.CupSectionView;
import padwright.workbench.views.KeyMapView;
import padwright.workbench.views.KeyTableView;
import padwright.workbench.views.RegulationView;
import padwright.workbench.views.RimClockView;

/** Opens the user guide beside the work, at what it says of the view or document that is being worked in. */
public final class GuideHandler extends AbstractHandler {

	/** A page and a heading on it. */
	private record Place(String page, String heading) {
	}

	private static final Place CONTENTS = new Place(GuideView.FIRST_PAGE, "");
	private static final Place VIEWS = new Place("workbench.html", "The views");

	private static final Map<String, Place> BY_VIEW = Map.of(RimClockView.ID, new Place("bench.html", "Reading"),
			RegulationView.ID, new Place("bench.html", "Regulating"), KeyMapView.ID, VIEWS, CupSectionView.ID, VIEWS,
			KeyTableView.ID, VIEWS, InspectorView.ID, VIEWS, ReportView.ID, new Place("workbench.html", "The Bench menu"),
			FindingsView.ID, new Place("workbench.html", "At the text"));

	private static final Map<String, Place> BY_DOCUMENT = Map.of("plan", new Place("plans.html", "A row"), "keys",
			new Place("systems.html", ""), "stock", new Place("materials.html", ""));

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		Place place = place(HandlerUtil.getActivePart(event));
		try {
			GuideView view = (GuideView) HandlerUtil.getActiveWorkbenchWindow(event).getActivePage().showView(GuideView.ID);
			view.go(place.page(), place.heading());
			return null;
		} catch (PartInitException unopened) {
			throw new ExecutionException(unopened.getMessage(), unopened);
		}
	}

	private static Place place(IWorkbenchPart part) {
		if (part instanceof IEditorPart editor && editor.getEditorInput().getAdapter(IFile.class) != null) {
			return BY_DOCUMENT.getOrDefault(
					String.valueOf(editor.getEditorInput().getAdapter(IFile.class).getFileExtension()), CONTENTS);
		}
		return part == null ? CONTENTS : BY_VIEW.getOrDefault(part.getSite().getId(), CONTENTS);
	}
}

package padwright.workbench.help;

import java.util.Collection;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

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

	/** A page and the anchor of a heading on it. */
	record Place(String page, String anchor) {
	}

	private static final Place CONTENTS = new Place(GuideView.FIRST_PAGE, "");
	private static final Place VIEWS = new Place("workbench.html", "the-views");

	private static final Map<String, Place> BY_VIEW = Map.of(RimClockView.ID, new Place("bench.html", "reading"),
			RegulationView.ID, new Place("bench.html", "regulating"), KeyMapView.ID, VIEWS, CupSectionView.ID, VIEWS,
			KeyTableView.ID, VIEWS, InspectorView.ID, VIEWS, ReportView.ID, new Place("workbench.html", "the-bench-menu"),
			FindingsView.ID, new Place("workbench.html", "at-the-text"));

	private static final Map<String, Place> BY_DOCUMENT = Map.of("plan", new Place("plans.html", "a-row"), "keys",
			new Place("systems.html", ""), "stock", new Place("materials.html", ""));

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		Place place = place(HandlerUtil.getActivePart(event));
		try {
			GuideView view = (GuideView) HandlerUtil.getActiveWorkbenchWindow(event).getActivePage().showView(GuideView.ID);
			view.go(place.page(), place.anchor());
			return null;
		} catch (PartInitException unopened) {
			throw new ExecutionException(unopened.getMessage(), unopened);
		}
	}

	/** All places that are led to. */
	static Stream<Place> places() {
		return Stream.of(Set.of(CONTENTS), BY_VIEW.values(), BY_DOCUMENT.values()).flatMap(Collection::stream);
	}

	private static Place place(IWorkbenchPart part) {
		if (part instanceof IEditorPart editor && editor.getEditorInput().getAdapter(IFile.class) != null) {
			return BY_DOCUMENT.getOrDefault(
					String.valueOf(editor.getEditorInput().getAdapter(IFile.class).getFileExtension()), CONTENTS);
		}
		return part == null ? CONTENTS : BY_VIEW.getOrDefault(part.getSite().getId(), CONTENTS);
	}
}

package padwright.workbench.tour;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.ui.PlatformUI;

import padwright.workbench.Messages;
import padwright.workbench.findings.FindingsView;
import padwright.workbench.views.CupSectionView;
import padwright.workbench.views.KeyMapView;
import padwright.workbench.views.RimClockView;

/**
 * One step of the tour.
 *
 * @param name of its words
 * @param view that it speaks of; nothing for the text of the plan
 */
record Step(String name, Optional<String> view) {

	private static final String KEY_TABLE = "padwright.workbench.keyTable";

	/** All steps, without those of views that this workbench has not. */
	static List<Step> all() {
		return Stream.of(new Step("text", Optional.empty()), of("keyMap", KeyMapView.ID), of("rimClock", RimClockView.ID),
				of("cupSection", CupSectionView.ID), of("keyTable", KEY_TABLE),
				of("problems", FindingsView.ID), new Step("papers", Optional.empty()))
				.filter(Step::isThere).toList();
	}

	private static Step of(String name, String view) {
		return new Step(name, Optional.of(view));
	}

	private boolean isThere() {
		return view.isEmpty() || PlatformUI.getWorkbench().getViewRegistry().find(view.get()) != null;
	}

	String title() {
		return Messages.get("tour." + name + ".title");
	}

	String words() {
		return Messages.get("tour." + name + ".words");
	}
}

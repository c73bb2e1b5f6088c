package padwright.workbench.views;

import java.util.HashMap;
import java.util.Map;

import org.eclipse.ui.IMemento;

import padwright.views.regulate.Progress;

/** Which couplings are done, for each plan; kept with the layout of the window. */
final class DoneWork {

	private static final String PLAN = "plan";
	private static final String URI = "uri";

	private final Map<String, Progress> plans = new HashMap<>();

	void restore(IMemento memento) {
		if (memento != null) {
			for (IMemento plan : memento.getChildren(PLAN)) {
				plans.put(plan.getString(URI), Progress.of(plan.getTextData()));
			}
		}
	}

	void save(IMemento memento) {
		plans.forEach((uri, progress) -> {
			IMemento plan = memento.createChild(PLAN);
			plan.putString(URI, uri);
			plan.putTextData(progress.toText());
		});
	}

	Progress of(String uri) {
		return plans.getOrDefault(uri, Progress.none());
	}

	void put(String uri, Progress progress) {
		plans.put(uri, progress);
	}
}

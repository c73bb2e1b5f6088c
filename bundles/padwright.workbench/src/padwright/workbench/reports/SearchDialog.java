package padwright.workbench.reports;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.widgets.Shell;

import padwright.workbench.Messages;
import padwright.workbench.prefs.Preferences;

/** Asks what to look for in all plans. */
final class SearchDialog extends Question<String> {

	private static final String LAST = "search.last";

	private SearchDialog(Shell shell) {
		super(shell, "search");
	}

	static Optional<String> ask(Shell shell) {
		return new SearchDialog(shell).ask();
	}

	@Override
	List<String> fields() {
		return List.of("search.words");
	}

	@Override
	List<String> last() {
		return List.of(Preferences.remembered(LAST));
	}

	@Override
	void keep(List<String> typed) {
		Preferences.remember(LAST, typed.get(0));
	}

	@Override
	String answer(List<String> typed) {
		if (typed.get(0).isEmpty()) {
			throw new IllegalArgumentException(Messages.get("search.nothing"));
		}
		return typed.get(0);
	}
}

package padwright.workbench.reports;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.widgets.Shell;

import padwright.workbench.Messages;
import padwright.workbench.prefs.Preferences;
import padwright.workbench.questions.Question;

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
	protected List<String> fields() {
		return List.of("search.words");
	}

	@Override
	protected List<String> last() {
		return List.of(Preferences.remembered(LAST));
	}

	@Override
	protected void keep(List<String> typed) {
		Preferences.remember(LAST, typed.get(0));
	}

	@Override
	protected String answer(List<String> typed) {
		if (typed.get(0).isEmpty()) {
			throw new IllegalArgumentException(Messages.get("search.nothing"));
		}
		return typed.get(0);
	}
}

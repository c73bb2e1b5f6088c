package padwright.workbench.reports;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.swt.widgets.Shell;

import padwright.workbench.Messages;
import padwright.workbench.questions.Question;

/** Asks which notes speak badly and which speak well. */
final class DiagnosisDialog extends Question<DiagnosisDialog.Notes> {

	/** Notes as they are written, such as F#4. */
	record Notes(List<String> bad, List<String> good) {
	}

	private DiagnosisDialog(Shell shell) {
		super(shell, "diagnosis");
	}

	static Optional<Notes> ask(Shell shell) {
		return new DiagnosisDialog(shell).ask();
	}

	@Override
	protected List<String> fields() {
		return List.of("diagnosis.bad", "diagnosis.good");
	}

	@Override
	protected List<String> last() {
		return List.of("", "");
	}

	@Override
	protected void keep(List<String> typed) {
		// The next instrument has other notes.
	}

	@Override
	protected Notes answer(List<String> typed) {
		return notes(typed.get(0), typed.get(1));
	}

	/** @throws IllegalArgumentException in the user's words */
	static Notes notes(String bad, String good) {
		Notes notes = new Notes(words(bad), words(good));
		if (notes.bad().isEmpty()) {
			throw new IllegalArgumentException(Messages.get("diagnosis.noBad"));
		}
		return notes;
	}

	private static List<String> words(String typed) {
		return Stream.of(typed.split("[,;\\s]+")).filter(word -> !word.isEmpty()).toList();
	}
}

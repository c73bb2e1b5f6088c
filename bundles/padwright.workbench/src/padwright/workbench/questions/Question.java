package padwright.workbench.questions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

import padwright.workbench.Messages;
import padwright.workbench.controls.Named;

/**
 * Asks for what a report needs, in fields that keep what was typed there last.
 *
 * @param <A> the answer
 */
public abstract class Question<A> extends TitleAreaDialog {

	private static final int GAP = 10;

	private final String key;
	private final List<Text> fields = new ArrayList<>();
	private Optional<A> answer = Optional.empty();

	/** @param key of its words: {@code key.title}, {@code key.about} */
	protected Question(Shell shell, String key) {
		super(shell);
		this.key = key;
	}

	/** Keys of the words of the fields. */
	protected abstract List<String> fields();

	/** What was typed last, field by field. */
	protected abstract List<String> last();

	/** Keeps what was typed. */
	protected abstract void keep(List<String> typed);

	/**
	 * The answer of what is typed.
	 *
	 * @throws IllegalArgumentException in the user's words
	 */
	protected abstract A answer(List<String> typed);

	/** Nothing where the user gave up. */
	protected final Optional<A> ask() {
		return open() == OK ? answer : Optional.empty();
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.get(key + ".title"));
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
		GridLayoutFactory.swtDefaults().numColumns(2).margins(GAP, GAP).applyTo(area);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
		for (int index = 0; index < fields().size(); index++) {
			String words = Messages.get(fields().get(index));
			new Label(area, SWT.NONE).setText(words);
			Text field = Named.as(words, new Text(area, SWT.BORDER));
			field.setText(last().get(index));
			field.addListener(SWT.Modify, typed -> look());
			GridDataFactory.fillDefaults().grab(true, false).applyTo(field);
			fields.add(field);
		}
		setTitle(Messages.get(key + ".title"));
		setMessage(Messages.get(key + ".about"));
		return area;
	}

	@Override
	protected Control createButtonBar(Composite parent) {
		Control bar = super.createButtonBar(parent);
		look();
		return bar;
	}

	private void look() {
		try {
			answer = Optional.of(answer(typed()));
			setErrorMessage(null);
		} catch (IllegalArgumentException wrong) {
			answer = Optional.empty();
			setErrorMessage(wrong.getMessage());
		}
		getButton(IDialogConstants.OK_ID).setEnabled(answer.isPresent());
	}

	private List<String> typed() {
		return fields.stream().map(field -> field.getText().strip()).toList();
	}

	@Override
	protected void okPressed() {
		keep(typed());
		super.okPressed();
	}
}

package padwright.workbench.recovery;

import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.text.IDocument;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import padwright.workbench.Messages;

/** A line above an editor that offers to bring back what was not saved. Not there where nothing was left behind. */
public final class RecoveryBar extends Composite {

	private final Path document;

	private RecoveryBar(Composite parent, Path document, IDocument text, String unsaved) {
		super(parent, SWT.BORDER);
		this.document = document;
		GridLayoutFactory.fillDefaults().numColumns(3).margins(6, 3).applyTo(this);
		Label words = new Label(this, SWT.WRAP);
		words.setText(Messages.get("recovery.found"));
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(words);
		button("recovery.bringBack", () -> text.set(unsaved));
		button("recovery.throwAway", () -> {
		});
		setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
	}

	/** Puts the bar on top of {@code parent}, which has a grid of one column, if there is anything to offer. */
	public static Optional<RecoveryBar> offer(Composite parent, Path document, IDocument text) {
		return Recovery.offer(document, text.get()).map(unsaved -> {
			RecoveryBar bar = new RecoveryBar(parent, document, text, unsaved);
			bar.moveAbove(null);
			parent.layout();
			return bar;
		});
	}

	private void button(String words, Runnable decision) {
		Button button = new Button(this, SWT.PUSH);
		button.setText(Messages.get(words));
		button.addListener(SWT.Selection, pressed -> {
			Composite parent = getParent();
			Recovery.settle(document);
			decision.run();
			dispose();
			parent.layout();
		});
	}
}

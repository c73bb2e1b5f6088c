package padwright.workbench.reports;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;

import padwright.workbench.Messages;

/** The answer of a command, to read and to copy from. */
public final class ReportView extends ViewPart {

	public static final String ID = "padwright.workbench.report";

	private Text text;

	@Override
	public void createPartControl(Composite parent) {
		text = new Text(parent, SWT.MULTI | SWT.READ_ONLY | SWT.H_SCROLL | SWT.V_SCROLL);
		text.setFont(JFaceResources.getTextFont());
		text.setText(Messages.get("report.empty"));
	}

	void show(Report report) {
		if (!text.isDisposed()) {
			setContentDescription(Messages.get("report.title", report.command(), report.subject().getFileName()));
			text.setText(report.text());
		}
	}

	/** What is shown. */
	public String text() {
		return text.getText();
	}

	@Override
	public void setFocus() {
		text.setFocus();
	}
}

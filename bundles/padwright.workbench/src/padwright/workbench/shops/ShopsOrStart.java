package padwright.workbench.shops;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.IResourceChangeListener;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;

import padwright.workbench.Messages;
import padwright.workbench.session.OpenShops;

/** Shows what is to be seen of open shops, or, where none is open, what to begin with. */
final class ShopsOrStart extends Composite {

	private static final int GAP = 10;

	private final StackLayout layout = new StackLayout();
	private final IResourceChangeListener onChange = event -> changed();
	private final Composite beginning;
	private Control shops;

	ShopsOrStart(Composite parent) {
		super(parent, SWT.NONE);
		setLayout(layout);
		beginning = new Composite(this, SWT.NONE);
		GridLayoutFactory.swtDefaults().margins(GAP, GAP).spacing(GAP, GAP).applyTo(beginning);
		fill();
		ResourcesPlugin.getWorkspace().addResourceChangeListener(onChange, IResourceChangeEvent.POST_CHANGE);
		addDisposeListener(gone -> ResourcesPlugin.getWorkspace().removeResourceChangeListener(onChange));
	}

	private void fill() {
		words("begin.none");
		link("begin.example", "padwright.workbench.exampleShop");
		words("begin.example.about");
		link("begin.new", "padwright.workbench.newShop");
		link("begin.open", "padwright.workbench.openShop");
	}

	private void words(String key) {
		Label label = new Label(beginning, SWT.WRAP);
		label.setText(Messages.get(key));
		GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(label);
	}

	private void link(String key, String command) {
		Link link = new Link(beginning, SWT.NONE);
		link.setText("<a>" + Messages.get(key) + "</a>");
		link.addSelectionListener(SelectionListener.widgetSelectedAdapter(chosen -> carryOut(command)));
	}

	private static void carryOut(String command) {
		try {
			PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(command, null);
		} catch (CommandException failed) {
			ILog.of(ShopsOrStart.class).error(command, failed);
		}
	}

	/** What to show where shops are open: a child of this. */
	void showing(Control control) {
		shops = control;
		refresh();
	}

	private void changed() {
		if (!isDisposed()) {
			getDisplay().asyncExec(() -> {
				if (!isDisposed()) {
					refresh();
				}
			});
		}
	}

	private void refresh() {
		Control top = OpenShops.folders().isEmpty() ? beginning : shops;
		if (layout.topControl != top) {
			layout.topControl = top;
			layout();
		}
	}

	/** Puts the focus to what is shown. */
	@Override
	public boolean setFocus() {
		return layout.topControl != null && layout.topControl.setFocus();
	}
}

package padwright.workbench.findings;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.IMarkerResolution;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.part.ViewPart;

import padwright.workbench.Messages;
import padwright.workbench.editor.Places;

/** What is to be put right in the open shops, by instrument and key; its menu holds the cures. */
public final class FindingsView extends ViewPart {

	public static final String ID = "padwright.workbench.findings";

	private static final int UNFOLDED = 3;

	private final FoundEverywhere everywhere = new FoundEverywhere(this::found);
	private TreeViewer tree;

	@Override
	public void createPartControl(Composite parent) {
		tree = new TreeViewer(parent, SWT.FULL_SELECTION | SWT.H_SCROLL | SWT.V_SCROLL);
		tree.setContentProvider(new Parts());
		tree.setLabelProvider(new Labels());
		tree.setUseHashlookup(true);
		tree.addOpenListener(opened -> open(((IStructuredSelection) opened.getSelection()).getFirstElement()));
		MenuManager menu = new MenuManager();
		menu.setRemoveAllWhenShown(true);
		menu.addMenuListener(this::fill);
		tree.getControl().setMenu(menu.createContextMenu(tree.getControl()));
		getSite().setSelectionProvider(tree);
		show(List.of());
		everywhere.start();
	}

	private void found(List<FoundIn> places) {
		tree.getControl().getDisplay().asyncExec(() -> {
			if (!tree.getControl().isDisposed()) {
				show(places);
			}
		});
	}

	private void show(List<FoundIn> places) {
		tree.getControl().setRedraw(false);
		tree.setInput(places);
		tree.expandToLevel(UNFOLDED);
		tree.getControl().setRedraw(true);
		setContentDescription(places.isEmpty() ? Messages.get("findings.none")
				: Messages.get("findings.count", count(places, IMarker.SEVERITY_ERROR),
						count(places, IMarker.SEVERITY_WARNING), count(places, IMarker.SEVERITY_INFO)));
	}

	private static long count(List<FoundIn> places, int severity) {
		return places.stream().mapToLong(place -> place.count(severity)).sum();
	}

	private void fill(IMenuManager menu) {
		if (tree.getStructuredSelection().getFirstElement() instanceof Found found) {
			menu.add(action(Messages.get("findings.show"), () -> open(found)));
			for (IMarkerResolution cure : IDE.getMarkerHelpRegistry().getResolutions(found.marker())) {
				menu.add(action(cure.getLabel(), () -> cure.run(found.marker())));
			}
		}
	}

	private static Action action(String label, Runnable work) {
		return new Action(label) {
			@Override
			public void run() {
				work.run();
			}
		};
	}

	private void open(Object chosen) {
		if (chosen instanceof Found found) {
			found.finding().ifPresent(finding -> Places.editor((IFile) found.marker().getResource())
					.ifPresent(editor -> Places.reveal(editor, finding.getRange())));
		} else if (chosen != null) {
			tree.setExpandedState(chosen, !tree.getExpandedState(chosen));
		}
	}

	/** What is shown, line by line, for tests. */
	public List<String> lines() {
		return ((List<?>) tree.getInput()).stream().flatMap(place -> lines((FoundIn) place)).toList();
	}

	private static Stream<String> lines(FoundIn place) {
		return Stream.concat(Stream.of(place.label()), Stream.concat(place.found().stream().map(Found::text),
				place.parts().stream().flatMap(FindingsView::lines)));
	}

	@Override
	public void setFocus() {
		tree.getControl().setFocus();
	}

	@Override
	public void dispose() {
		everywhere.stop();
		super.dispose();
	}

	private static final class Parts implements ITreeContentProvider {

		@Override
		public Object[] getElements(Object input) {
			return ((List<?>) input).toArray();
		}

		@Override
		public Object[] getChildren(Object place) {
			return place instanceof FoundIn in ? Stream.concat(in.found().stream(), in.parts().stream()).toArray()
					: new Object[0];
		}

		@Override
		public Object getParent(Object place) {
			return null;
		}

		@Override
		public boolean hasChildren(Object place) {
			return place instanceof FoundIn;
		}
	}

	private static final class Labels extends LabelProvider {

		@Override
		public String getText(Object place) {
			return place instanceof Found found ? found.text() : ((FoundIn) place).label();
		}

		@Override
		public Image getImage(Object place) {
			int severity = place instanceof Found found ? found.severity() : ((FoundIn) place).severity();
			return PlatformUI.getWorkbench().getSharedImages().getImage(switch (severity) {
				case IMarker.SEVERITY_ERROR -> ISharedImages.IMG_OBJS_ERROR_TSK;
				case IMarker.SEVERITY_WARNING -> ISharedImages.IMG_OBJS_WARN_TSK;
				default -> ISharedImages.IMG_OBJS_INFO_TSK;
			});
		}
	}
}

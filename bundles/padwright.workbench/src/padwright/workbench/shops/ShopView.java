package padwright.workbench.shops;

import java.util.function.Consumer;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.IResourceChangeListener;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.Viewer;
import org.eclipse.jface.viewers.ViewerComparator;
import org.eclipse.jface.viewers.ViewerFilter;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.model.WorkbenchContentProvider;
import org.eclipse.ui.part.ViewPart;

import padwright.language.shop.ShopFolder;
import padwright.workbench.editor.Places;
import padwright.workbench.menus.BenchMenu;
import padwright.workbench.session.Finding;
import padwright.workbench.session.OpenShops;

/** The open shops and their files, with what is wrong in each. */
public final class ShopView extends ViewPart {

	public static final String ID = "padwright.workbench.shops";

	private static final String MENU = "padwright.workbench.shopMenu";
	private static final String BACKUP_END = ".bak";

	private final IResourceChangeListener onFound = this::found;
	private final Consumer<IFolder> onOpened = this::unfold;
	private ShopsOrStart space;
	private TreeViewer tree;

	@Override
	public void createPartControl(Composite parent) {
		space = new ShopsOrStart(parent);
		tree = new TreeViewer(space, SWT.MULTI | SWT.H_SCROLL | SWT.V_SCROLL);
		tree.setContentProvider(new WorkbenchContentProvider());
		tree.setLabelProvider(new ShopLabels());
		ResourcesPlugin.getWorkspace().addResourceChangeListener(onFound, IResourceChangeEvent.POST_CHANGE);
		tree.setComparator(new FoldersFirst());
		tree.addFilter(new DocumentsOnly());
		tree.addDoubleClickListener(click -> open());
		try {
			tree.setInput(OpenShops.project());
		} catch (CoreException unreadable) {
			ILog.of(ShopView.class).log(unreadable.getStatus());
		}
		tree.expandToLevel(2);
		OpenShops.addListener(onOpened);
		space.showing(tree.getControl());
		getSite().setSelectionProvider(tree);
		BenchMenu.on(tree.getControl(), MENU, getSite());
	}

	/** Shows what is in a shop. */
	private void unfold(IFolder shop) {
		later(() -> tree.expandToLevel(shop, 1));
	}

	/** Marks of folders change with those of what is in them. */
	private void found(IResourceChangeEvent event) {
		if (event.findMarkerDeltas(Finding.MARKER, true).length > 0) {
			later(() -> tree.refresh(true));
		}
	}

	private void later(Runnable change) {
		space.getDisplay().asyncExec(() -> {
			if (!tree.getControl().isDisposed()) {
				change.run();
			}
		});
	}

	@Override
	public void dispose() {
		ResourcesPlugin.getWorkspace().removeResourceChangeListener(onFound);
		OpenShops.removeListener(onOpened);
		super.dispose();
	}

	private void open() {
		Object chosen = ((IStructuredSelection) tree.getSelection()).getFirstElement();
		if (chosen instanceof IFile file) {
			Places.editor(file);
		} else if (chosen != null) {
			tree.setExpandedState(chosen, !tree.getExpandedState(chosen));
		}
	}

	@Override
	public void setFocus() {
		space.setFocus();
	}

	private static final class FoldersFirst extends ViewerComparator {

		@Override
		public int category(Object element) {
			return element instanceof IFile ? 1 : 0;
		}
	}

	/** Hides what is not for the eye: hidden files, backups and what autosave keeps. */
	private static final class DocumentsOnly extends ViewerFilter {

		@Override
		public boolean select(Viewer viewer, Object parent, Object element) {
			return element instanceof IResource resource && !resource.getName().startsWith(".")
					&& !resource.getName().endsWith(BACKUP_END) && !resource.getName().equals(ShopFolder.MARKER);
		}
	}
}

package padwright.workbench.views;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.actions.ActionFactory;

import padwright.views.canvas.LayoutControl;
import padwright.views.layout.Arrangement;
import padwright.views.layout.LayoutEditing;
import padwright.views.layout.LayoutItem;
import padwright.views.layout.LayoutKind;
import padwright.workbench.Messages;

/** What can be done in a layout, as a context menu and by the keys that the window has for it. */
final class LayoutMenu {

	private static final String ID = "padwright.workbench.layoutMenu";

	private final LayoutControl layout;
	private final Consumer<List<LayoutItem>> toText;

	LayoutMenu(LayoutControl layout, Consumer<List<LayoutItem>> toText) {
		this.layout = layout;
		this.toText = toText;
	}

	private LayoutEditing editing() {
		return layout.editing();
	}

	/** Gives the drawing its menu, made anew whenever it is opened. */
	void onCanvas() {
		MenuManager menu = new MenuManager(null, ID);
		menu.setRemoveAllWhenShown(true);
		menu.addMenuListener(this::fill);
		layout.canvas().setMenu(menu.createContextMenu(layout.canvas()));
		layout.addDisposeListener(gone -> menu.dispose());
	}

	private void fill(IMenuManager menu) {
		boolean canEdit = editing().layout().isEditable();
		boolean any = !editing().selected().isEmpty();
		MenuManager add = new MenuManager(Messages.get("layout.add"));
		for (LayoutKind kind : LayoutKind.values()) {
			add.add(action(kind.inWords(), canEdit, () -> editing().add(kind)));
		}
		menu.add(add);
		menu.add(arrange(canEdit && any));
		menu.add(new Separator());
		menu.add(action(Messages.get("layout.rename"), canEdit && any, layout::rename));
		menu.add(action(Messages.get("layout.asInherited"), canEdit && editing().canBeAsInherited(),
				editing()::asInherited));
		menu.add(action(Messages.get("layout.delete"), canEdit && any, editing()::delete));
		menu.add(new Separator());
		menu.add(action(Messages.get("layout.copy"), any, this::copy));
		menu.add(action(Messages.get("layout.paste"), canEdit, this::paste));
		menu.add(new Separator());
		menu.add(action(Messages.get("layout.text"), any, () -> toText.accept(editing().chosen())));
		menu.add(action(Messages.get("layout.save"), editing().layout().system().isPresent(),
				() -> LayoutPictureFile.ask(layout)));
	}

	private MenuManager arrange(boolean enabled) {
		MenuManager menu = new MenuManager(Messages.get("layout.arrange"));
		menu.add(action(Messages.get("layout.alignAlong"), enabled, () -> editing().arrange(Arrangement.ALIGN_ALONG)));
		menu.add(action(Messages.get("layout.alignAround"), enabled, () -> editing().arrange(Arrangement.ALIGN_AROUND)));
		menu.add(action(Messages.get("layout.distribute"), enabled, () -> editing().arrange(Arrangement.DISTRIBUTE)));
		menu.add(action(Messages.get("layout.mirror"), enabled, () -> editing().arrange(Arrangement.MIRROR)));
		return menu;
	}

	/** Copy, paste, delete and select all of the window's Edit menu work in the drawing. */
	void onKeys(IActionBars bars) {
		bars.setGlobalActionHandler(ActionFactory.COPY.getId(), action("", true, this::copy));
		bars.setGlobalActionHandler(ActionFactory.PASTE.getId(), action("", true, this::paste));
		bars.setGlobalActionHandler(ActionFactory.DELETE.getId(), action("", true, editing()::delete));
		bars.setGlobalActionHandler(ActionFactory.SELECT_ALL.getId(), action("", true,
				() -> editing().select(new LinkedHashSet<>(editing().layout().items().stream()
						.map(LayoutItem::id).toList()))));
	}

	private static IAction action(String text, boolean enabled, Runnable work) {
		Action action = new Action(text) {
			@Override
			public void run() {
				work.run();
			}
		};
		action.setEnabled(enabled);
		return action;
	}

	private void copy() {
		if (!editing().selected().isEmpty()) {
			Clipboard clipboard = new Clipboard(layout.getDisplay());
			clipboard.setContents(new Object[] {editing().copied()}, new Transfer[] {TextTransfer.getInstance()});
			clipboard.dispose();
		}
	}

	private void paste() {
		Clipboard clipboard = new Clipboard(layout.getDisplay());
		if (clipboard.getContents(TextTransfer.getInstance()) instanceof String text) {
			editing().paste(text);
		}
		clipboard.dispose();
	}
}

package padwright.workbench.menus;

import org.eclipse.jface.action.MenuManager;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.menus.IMenuService;
import org.eclipse.ui.services.IServiceLocator;

/**
 * The context menu of a view or text: what plugin.xml puts into it and nothing else. A menu that is registered with the
 * platform would also hold what it offers those who write program code.
 */
public final class BenchMenu {

	private BenchMenu() {
	}

	/**
	 * Gives a control its menu.
	 *
	 * @param id of the menu in plugin.xml, behind {@code popup:}
	 */
	public static void on(Control control, String id, IServiceLocator site) {
		IMenuService menus = site.getService(IMenuService.class);
		MenuManager menu = new MenuManager(null, id);
		menus.populateContributionManager(menu, "popup:" + id);
		control.setMenu(menu.createContextMenu(control));
		control.addDisposeListener(gone -> {
			menus.releaseContributions(menu);
			menu.dispose();
		});
	}
}

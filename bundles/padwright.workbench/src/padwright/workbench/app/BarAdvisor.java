package padwright.workbench.app;

import org.eclipse.jface.action.ICoolBarManager;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.action.ToolBarContributionItem;
import org.eclipse.jface.action.ToolBarManager;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.actions.ContributionItemFactory;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;

import padwright.workbench.Messages;

/** The menus and tools that every workbench has; those of our own are contributed in plugin.xml. */
final class BarAdvisor extends ActionBarAdvisor {

	private IWorkbenchWindow window;

	BarAdvisor(IActionBarConfigurer configurer) {
		super(configurer);
	}

	@Override
	protected void makeActions(IWorkbenchWindow ofWindow) {
		window = ofWindow;
	}

	@Override
	protected void fillMenuBar(IMenuManager bar) {
		bar.add(file());
		bar.add(edit());
		bar.add(bench());
		bar.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
		bar.add(window());
		bar.add(help());
	}

	private MenuManager file() {
		MenuManager menu = new MenuManager(Messages.get("menu.file"), IWorkbenchActionConstants.M_FILE);
		menu.add(new Separator(IWorkbenchActionConstants.FILE_START));
		menu.add(new Separator());
		addAll(menu, ActionFactory.CLOSE, ActionFactory.CLOSE_ALL);
		menu.add(new Separator());
		addAll(menu, ActionFactory.SAVE, ActionFactory.SAVE_AS, ActionFactory.SAVE_ALL, ActionFactory.REVERT);
		menu.add(new Separator());
		addAll(menu, ActionFactory.PRINT);
		menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
		addAll(menu, ActionFactory.QUIT);
		return menu;
	}

	private MenuManager edit() {
		MenuManager menu = new MenuManager(Messages.get("menu.edit"), IWorkbenchActionConstants.M_EDIT);
		menu.add(new Separator(IWorkbenchActionConstants.EDIT_START));
		addAll(menu, ActionFactory.UNDO, ActionFactory.REDO);
		menu.add(new Separator(IWorkbenchActionConstants.UNDO_EXT));
		addAll(menu, ActionFactory.CUT, ActionFactory.COPY, ActionFactory.PASTE, ActionFactory.DELETE,
				ActionFactory.SELECT_ALL);
		menu.add(new Separator(IWorkbenchActionConstants.CUT_EXT));
		addAll(menu, ActionFactory.FIND);
		menu.add(new Separator(IWorkbenchActionConstants.FIND_EXT));
		menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
		return menu;
	}

	private static MenuManager bench() {
		MenuManager menu = new MenuManager(Messages.get("menu.bench"), "padwright.bench");
		menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
		return menu;
	}

	private MenuManager window() {
		MenuManager menu = new MenuManager(Messages.get("menu.window"), IWorkbenchActionConstants.M_WINDOW);
		MenuManager views = new MenuManager(Messages.get("menu.views"));
		views.add(ContributionItemFactory.VIEWS_SHORTLIST.create(window));
		menu.add(views);
		menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
		menu.add(new ResetLayout(window));
		addAll(menu, ActionFactory.PREFERENCES);
		return menu;
	}

	private MenuManager help() {
		MenuManager menu = new MenuManager(Messages.get("menu.help"), IWorkbenchActionConstants.M_HELP);
		menu.add(new Separator(IWorkbenchActionConstants.HELP_START));
		menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
		return menu;
	}

	private void addAll(IMenuManager menu, ActionFactory... actions) {
		for (ActionFactory factory : actions) {
			var action = factory.create(window);
			action.setText(Messages.get("action." + factory.getId()));
			register(action);
			menu.add(action);
		}
	}

	@Override
	protected void fillCoolBar(ICoolBarManager bar) {
		ToolBarManager tools = new ToolBarManager();
		for (ActionFactory factory : new ActionFactory[] {ActionFactory.SAVE, ActionFactory.UNDO, ActionFactory.REDO}) {
			tools.add(getAction(factory.getId()));
		}
		bar.add(new ToolBarContributionItem(tools, IWorkbenchActionConstants.TOOLBAR_FILE));
		bar.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
	}
}

package padwright.workbench.menus;

import java.util.Map;

import org.eclipse.jface.action.IContributionItem;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.actions.CompoundContributionItem;
import org.eclipse.ui.menus.CommandContributionItem;
import org.eclipse.ui.menus.CommandContributionItemParameter;

import padwright.workup.extensions.Extensions;
import padwright.workup.extensions.NamedExtension;

/** The items of a menu for what extensions add of one kind, each a command with a parameter that names it. */
abstract class AddedItems extends CompoundContributionItem {

	private final Class<? extends NamedExtension> kind;
	private final String command;
	private final String parameter;

	AddedItems(Class<? extends NamedExtension> kind, String command, String parameter) {
		this.kind = kind;
		this.command = command;
		this.parameter = parameter;
	}

	@Override
	protected final IContributionItem[] getContributionItems() {
		return Extensions.installed().byName(kind).entrySet().stream().map(named -> item(named.getKey(),
				Extensions.installed().ask(named.getValue(), named.getValue().thing()::title, named.getKey())))
				.toArray(IContributionItem[]::new);
	}

	private IContributionItem item(String name, String title) {
		CommandContributionItemParameter item = new CommandContributionItemParameter(PlatformUI.getWorkbench(), null,
				command, CommandContributionItem.STYLE_PUSH);
		item.label = title;
		item.parameters = Map.of(parameter, AddedNames.parameter(name));
		return new CommandContributionItem(item);
	}
}

package padwright.views.canvas;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

import padwright.views.Messages;
import padwright.views.layout.LayoutLink;

/** Asks what is meant by something that was drawn from one key to another. */
final class LinkMenu {

	private LinkMenu() {
	}

	static Menu open(Control over, List<LayoutLink.Kind> kinds, Consumer<LayoutLink.Kind> onKind) {
		Menu menu = new Menu(over);
		for (LayoutLink.Kind kind : kinds) {
			MenuItem item = new MenuItem(menu, SWT.PUSH);
			item.setText(Messages.of("layout.link." + kind.name().toLowerCase(Locale.ROOT)));
			item.addListener(SWT.Selection, event -> onKind.accept(kind));
		}
		menu.addListener(SWT.Hide, event -> over.getDisplay().asyncExec(menu::dispose));
		menu.setVisible(true);
		return menu;
	}
}

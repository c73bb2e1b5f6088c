package padwright.views.table;

import org.eclipse.swt.widgets.Table;

import padwright.views.Palette;
import padwright.views.canvas.Colours;

/** Tables in the colours of a theme. */
final class TableColours {

	private TableColours() {
	}

	static void apply(Table table, Palette palette) {
		table.setBackground(Colours.of(palette.ground()));
		table.setForeground(Colours.of(palette.ink()));
		table.setHeaderBackground(Colours.of(palette.tint(palette.quiet(), 0.18)));
		table.setHeaderForeground(Colours.of(palette.ink()));
	}
}

package padwright.views.table;

import org.eclipse.swt.widgets.Table;

import padwright.views.Palette;
import padwright.views.canvas.Colours;

/** Tables in the colours of a theme. */
final class TableColours {

	/**
	 * The platform's theme engine keeps the rows of tables that it has coloured, and a change of theme then asks the
	 * toolkit for rows that have gone, which may end the program. Our tables have their colours from here anyway.
	 */
	private static final String NOT_FOR_THE_THEME_ENGINE = "org.eclipse.e4.ui.css.disabled";

	private TableColours() {
	}

	static void apply(Table table, Palette palette) {
		table.setData(NOT_FOR_THE_THEME_ENGINE, Boolean.TRUE);
		table.setBackground(Colours.of(palette.ground()));
		table.setForeground(Colours.of(palette.ink()));
		table.setHeaderBackground(Colours.of(palette.tint(palette.quiet(), 0.18)));
		table.setHeaderForeground(Colours.of(palette.ink()));
	}
}

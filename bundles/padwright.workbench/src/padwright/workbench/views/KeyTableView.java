package padwright.workbench.views;

import java.util.List;

import org.eclipse.swt.widgets.Composite;

import padwright.views.Palette;
import padwright.views.rows.KeyRows;
import padwright.views.table.KeyTable;
import padwright.workbench.bench.Bench;
import padwright.workbench.bench.OnBench;
import padwright.workbench.bench.PlanOnBench;

/** Every key in a row. */
public final class KeyTableView extends BenchView<KeyTable> {

	public static final String ID = "padwright.workbench.keyTable";

	private static final KeyRows NONE = new KeyRows(List.of());

	@Override
	protected KeyTable create(Composite parent, Palette palette, Bench bench) {
		KeyTable table = new KeyTable(parent, palette);
		table.onSelect(bench::choose);
		table.onJump(bench::open);
		table.onEdit(bench::write);
		keyMenuOn(table.table());
		return table;
	}

	@Override
	protected void show(KeyTable table, OnBench onBench) {
		table.show(onBench.plan().map(PlanOnBench::rows).orElse(NONE), onBench.key());
	}

	@Override
	protected void setPalette(KeyTable table, Palette palette) {
		table.setPalette(palette);
	}
}

package padwright.workbench.views;

import java.util.Optional;

import org.eclipse.swt.widgets.Composite;

import padwright.views.Palette;
import padwright.views.canvas.FingeringControl;
import padwright.views.layout.Layout;
import padwright.workbench.bench.Bench;
import padwright.workbench.bench.OnBench;
import padwright.workbench.bench.SystemOnBench;

/** The touches of the system in the active editor, to be pressed and written down as notes. */
public final class FingeringView extends BenchView<FingeringControl> {

	public static final String ID = "padwright.workbench.fingering";

	@Override
	protected FingeringControl create(Composite parent, Palette palette, Bench bench) {
		FingeringControl fingering = new FingeringControl(parent, palette);
		fingering.onEdit(bench::write);
		fingering.onPress(bench.hands()::press);
		return fingering;
	}

	@Override
	protected void show(FingeringControl fingering, OnBench onBench) {
		Optional<Layout> layout = onBench.work().filter(SystemOnBench.class::isInstance)
				.map(work -> ((SystemOnBench) work).layout());
		fingering.show(layout.orElseGet(Layout::empty));
	}

	@Override
	protected void setPalette(FingeringControl fingering, Palette palette) {
		fingering.setPalette(palette);
	}
}

package padwright.workbench.views;

import org.eclipse.swt.widgets.Composite;

import padwright.views.Palette;
import padwright.views.canvas.FingeringControl;
import padwright.views.layout.Layout;
import padwright.workbench.bench.Bench;
import padwright.workbench.bench.OnBench;

/** The touches of the system in the active editor, or of the plan there, to be pressed and written down as notes. */
public final class FingeringView extends SystemView<FingeringControl> {

	public static final String ID = "padwright.workbench.fingering";

	@Override
	protected FingeringControl create(Composite parent, Palette palette, Bench bench) {
		FingeringControl fingering = new FingeringControl(parent, palette);
		fingering.onEdit(bench::writeSystem);
		fingering.onPress(bench.hands()::press);
		return fingering;
	}

	@Override
	void show(FingeringControl fingering, Layout layout, OnBench onBench) {
		fingering.show(layout);
	}

	@Override
	protected void setPalette(FingeringControl fingering, Palette palette) {
		fingering.setPalette(palette);
	}
}

package padwright.workbench.views;

import org.eclipse.swt.widgets.Composite;

import padwright.views.Palette;
import padwright.views.canvas.CupSection;
import padwright.views.section.CupSectionState;
import padwright.workbench.bench.Bench;
import padwright.workbench.bench.OnBench;

/** The cup of the chosen key, cut open. */
public final class CupSectionView extends BenchView<CupSection> {

	public static final String ID = "padwright.workbench.cupSection";

	@Override
	protected CupSection create(Composite parent, Palette palette, Bench bench) {
		return new CupSection(parent, palette);
	}

	@Override
	protected void show(CupSection section, OnBench onBench) {
		section.show(onBench.row().map(CupSectionState::of).orElse(CupSectionState.empty()));
	}

	@Override
	protected void setPalette(CupSection section, Palette palette) {
		section.setPalette(palette);
	}
}

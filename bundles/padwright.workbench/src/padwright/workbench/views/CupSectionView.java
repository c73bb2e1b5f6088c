package padwright.workbench.views;

import org.eclipse.swt.widgets.Composite;

import padwright.views.Palette;
import padwright.views.canvas.CupSection;
import padwright.views.section.CupSectionState;
import padwright.workbench.bench.Bench;

/** The cup of the chosen key, cut open. */
public final class CupSectionView extends RowView<CupSection, CupSectionState> {

	public static final String ID = "padwright.workbench.cupSection";

	public CupSectionView() {
		super(CupSectionState::of, CupSectionState.empty(), CupSection::show);
	}

	@Override
	protected CupSection create(Composite parent, Palette palette, Bench bench) {
		return new CupSection(parent, palette);
	}

	@Override
	protected void setPalette(CupSection section, Palette palette) {
		section.setPalette(palette);
	}
}

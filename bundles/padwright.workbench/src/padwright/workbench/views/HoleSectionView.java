package padwright.workbench.views;

import java.util.Optional;

import org.eclipse.swt.widgets.Composite;

import padwright.model.keysystem.Hole;
import padwright.model.keysystem.Titled;
import padwright.views.Palette;
import padwright.views.canvas.HoleSectionControl;
import padwright.views.layout.Layout;
import padwright.workbench.bench.Bench;
import padwright.workbench.bench.OnBench;

/** The tube cut across through the chosen hole, whose sizes can be dragged. */
public final class HoleSectionView extends SystemView<HoleSectionControl> {

	public static final String ID = "padwright.workbench.holeSection";

	private Optional<String> lastKey = Optional.empty();

	@Override
	protected HoleSectionControl create(Composite parent, Palette palette, Bench bench) {
		HoleSectionControl section = new HoleSectionControl(parent, palette);
		section.onEdit(bench::writeSystem);
		section.onChoose(item -> bench.choosePart(item.thing()));
		return section;
	}

	/** A hole that is chosen in a drawing goes before the key at the caret, which counts when it becomes another. */
	@Override
	void show(HoleSectionControl section, Layout layout, OnBench onBench) {
		section.show(layout);
		Optional<Titled> part = onBench.part();
		boolean isOtherKey = !onBench.key().equals(lastKey);
		lastKey = onBench.key();
		if (part.isPresent()) {
			section.choose((part.get() instanceof Hole ? "hole:" : "key:") + part.get().getName());
		} else if (isOtherKey) {
			onBench.key().ifPresent(key -> section.choose("key:" + key));
		}
	}

	@Override
	protected void setPalette(HoleSectionControl section, Palette palette) {
		section.setPalette(palette);
	}
}

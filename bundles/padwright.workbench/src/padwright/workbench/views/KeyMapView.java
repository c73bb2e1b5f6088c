package padwright.workbench.views;

import java.util.Set;

import org.eclipse.swt.widgets.Composite;

import padwright.views.Palette;
import padwright.views.canvas.KeyMap;
import padwright.views.map.KeyMapState;
import padwright.workbench.bench.Bench;
import padwright.workbench.bench.OnBench;
import padwright.workbench.bench.Workpiece;

/** The instrument with the state of every key. */
public final class KeyMapView extends BenchView<KeyMap> {

	public static final String ID = "padwright.workbench.keyMap";

	@Override
	protected KeyMap create(Composite parent, Palette palette, Bench bench) {
		KeyMap map = new KeyMap(parent, palette);
		map.onSelect(keys -> {
			if (!keys.isEmpty()) {
				bench.choose(keys.get(keys.size() - 1));
			}
		});
		map.onJump(bench::open);
		return map;
	}

	@Override
	protected void show(KeyMap map, OnBench onBench) {
		map.show(onBench.work().map(Workpiece::map).orElse(KeyMapState.empty()),
				onBench.key().map(Set::of).orElse(Set.of()));
	}

	@Override
	protected void setPalette(KeyMap map, Palette palette) {
		map.setPalette(palette);
	}
}

package padwright.workbench.views;

import java.util.Set;

import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.PartInitException;

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
		map.onOpen(this::feel);
		map.onJump(bench::open);
		keyMenuOn(map.canvas());
		return map;
	}

	/** Opens the clock of a key, which takes what is typed next. */
	private void feel(String key) {
		bench().choose(key);
		try {
			getSite().getPage().showView(RimClockView.ID);
		} catch (PartInitException unopened) {
			ILog.of(KeyMapView.class).log(unopened.getStatus());
		}
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

package padwright.views.canvas;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;

import padwright.views.Messages;
import padwright.views.Palette;
import padwright.views.map.KeyMapScene;
import padwright.views.map.KeyMapState;

/** The instrument drawn from its model, with the state of every key. */
public final class KeyMap extends Composite {

	private final SceneCanvas canvas;
	private Palette palette;
	private KeyMapState state = KeyMapState.empty();
	private Set<String> selected = Set.of();
	private Consumer<List<String>> onSelect = keys -> {
	};
	private Consumer<String> onOpen = key -> {
	};
	private Consumer<String> onJump = key -> {
	};

	public KeyMap(Composite parent, Palette palette) {
		super(parent, SWT.NONE);
		this.palette = palette;
		setLayout(new FillLayout());
		canvas = new SceneCanvas(this, palette, new Touches());
		canvas.setName(Messages.of("map.name"));
		redrawn();
	}

	/**
	 * Shows a map.
	 *
	 * @param selected names of the keys that are shown as selected; listeners are not told
	 */
	public void show(KeyMapState state, Set<String> selected) {
		this.state = state;
		this.selected = new LinkedHashSet<>(selected);
		redrawn();
	}

	public void setPalette(Palette palette) {
		this.palette = palette;
		canvas.setPalette(palette);
	}

	/** Told the names of all selected keys whenever the user changes which are, the last touched one last. */
	public void onSelect(Consumer<List<String>> listener) {
		onSelect = listener;
	}

	/** Told the name of a key that is double-clicked, or chosen twice with Enter. */
	public void onOpen(Consumer<String> listener) {
		onOpen = listener;
	}

	/** Told the name of a key whose text is to be gone to: only by a key that says so (F3). */
	public void onJump(Consumer<String> listener) {
		onJump = listener;
	}

	/** For zooming from a menu or tool bar. */
	public SceneCanvas canvas() {
		return canvas;
	}

	@Override
	public boolean setFocus() {
		return canvas.setFocus();
	}

	private void redrawn() {
		canvas.setSource(aspect -> KeyMapScene.draw(state, palette, selected, aspect));
	}

	private final class Touches implements SceneListener {

		@Override
		public void touched(String id, boolean adding) {
			Set<String> next = adding ? new LinkedHashSet<>(selected) : new LinkedHashSet<>();
			if (!next.remove(id)) {
				next.add(id);
			}
			select(next);
		}

		@Override
		public void opened(String id) {
			onOpen.accept(id);
		}

		@Override
		public boolean typed(KeyEvent key) {
			boolean jumps = key.keyCode == SWT.F3 && canvas.focus().isPresent();
			canvas.focus().filter(id -> jumps).ifPresent(onJump);
			return jumps;
		}

		@Override
		public void cleared() {
			select(Set.of());
		}

		private void select(Set<String> next) {
			selected = next;
			redrawn();
			onSelect.accept(List.copyOf(next));
		}
	}
}

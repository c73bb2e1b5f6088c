package padwright.views.canvas;

import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;

import padwright.views.Messages;
import padwright.views.Palette;
import padwright.views.photos.PhotoScene;
import padwright.views.photos.PlanPhotos;

/** The photographs of a plan, small. */
public final class Photos extends Composite {

	private final SceneCanvas canvas;
	private Palette palette;
	private PlanPhotos photos = PlanPhotos.NONE;
	private Consumer<String> onOpen = id -> {
	};

	public Photos(Composite parent, Palette palette) {
		super(parent, SWT.NONE);
		this.palette = palette;
		setLayout(new FillLayout());
		canvas = new SceneCanvas(this, palette, new SceneListener() {
			@Override
			public void opened(String id) {
				onOpen.accept(id);
			}
		});
		canvas.setName(Messages.of("photos.name"));
		redrawn();
	}

	public void show(PlanPhotos shown) {
		photos = shown;
		redrawn();
	}

	/** What is shown. */
	public PlanPhotos photos() {
		return photos;
	}

	/** Told the id of a photograph that is double-clicked, or chosen twice with Enter. */
	public void onOpen(Consumer<String> listener) {
		onOpen = listener;
	}

	public void setPalette(Palette palette) {
		this.palette = palette;
		canvas.setPalette(palette);
		redrawn();
	}

	@Override
	public boolean setFocus() {
		return canvas.setFocus();
	}

	private void redrawn() {
		canvas.setSource(aspect -> PhotoScene.draw(photos.photos(), palette, aspect));
	}
}

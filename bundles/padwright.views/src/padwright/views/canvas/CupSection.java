package padwright.views.canvas;

import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;

import padwright.views.Messages;
import padwright.views.Palette;
import padwright.views.section.CupSectionScene;
import padwright.views.section.CupSectionState;

/** A cup cut open: its layers to scale, what they have to sum to, and what is missing to the rim. */
public final class CupSection extends Composite {

	private static final List<Integer> EXAGGERATIONS = List.of(1, 2, 3, 5, 10, 20);
	private static final int USUAL = 3;

	private final Bar bar;
	private final Combo choice;
	private final SceneCanvas canvas;
	private Palette palette;
	private CupSectionState state = CupSectionState.empty();
	private int exaggeration = USUAL;
	private Consumer<Integer> onExaggerate = times -> {
	};

	public CupSection(Composite parent, Palette palette) {
		super(parent, SWT.NONE);
		this.palette = palette;
		bar = new Bar(this);
		bar.label(Messages.of("section.exaggeration"));
		choice = new Combo(bar.row(), SWT.READ_ONLY);
		choice.setItems(EXAGGERATIONS.stream().map(times -> times + " \u00d7").toArray(String[]::new));
		choice.addListener(SWT.Selection, event -> exaggerated(EXAGGERATIONS.get(choice.getSelectionIndex())));
		Bar.name(choice, Messages.of("section.exaggeration"));
		canvas = new SceneCanvas(this, palette, new SceneListener() {
		});
		canvas.setName(Messages.of("section.name"));
		Bar.fill(canvas);
		setExaggeration(USUAL);
		setPalette(palette);
	}

	/** Shows the section of a cup. */
	public void show(CupSectionState state) {
		this.state = state;
		redrawn();
	}

	/**
	 * How many times higher than wide the section is drawn.
	 *
	 * @param times 1, 2, 3, 5, 10 or 20; the next lower of these for others
	 */
	public void setExaggeration(int times) {
		int index = Arrays.binarySearch(EXAGGERATIONS.toArray(), times);
		choice.select(index >= 0 ? index : Math.max(0, -index - 2));
		exaggeration = EXAGGERATIONS.get(choice.getSelectionIndex());
		redrawn();
	}

	/** Told when the user chooses another exaggeration, so that it can be remembered. */
	public void onExaggerate(Consumer<Integer> listener) {
		onExaggerate = listener;
	}

	private void exaggerated(int times) {
		exaggeration = times;
		redrawn();
		onExaggerate.accept(times);
	}

	public void setPalette(Palette palette) {
		this.palette = palette;
		setBackground(Colours.of(palette.ground()));
		bar.setPalette(palette);
		canvas.setPalette(palette);
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
		canvas.setSource(aspect -> CupSectionScene.draw(state, palette, exaggeration, aspect));
	}
}

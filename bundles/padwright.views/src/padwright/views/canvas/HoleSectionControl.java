package padwright.views.canvas;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;

import padwright.language.edit.TextEdit;
import padwright.views.Figures;
import padwright.views.Messages;
import padwright.views.Palette;
import padwright.views.hole.HoleSectionEditing;
import padwright.views.hole.HoleSectionScene;
import padwright.views.hole.HoleSize;
import padwright.views.layout.Layout;
import padwright.views.layout.LayoutItem;

/**
 * The section through a hole, whose sizes can be dragged. Tab goes from one size to the next, Ctrl with the arrows makes it
 * larger or smaller by a tenth of a millimetre (with Shift by a whole one), Enter lets it be typed.
 */
public final class HoleSectionControl extends DrawingControl {

	private static final int FAR = 10;

	private final HoleSectionEditing editing = new HoleSectionEditing(this::redrawn, edits -> this.onEdit.accept(edits));
	private final Combo choice;
	private List<String> listed = List.of();
	private Consumer<List<TextEdit>> onEdit = edits -> {
	};
	private Consumer<LayoutItem> onChoose = item -> {
	};

	public HoleSectionControl(Composite parent, Palette palette) {
		super(parent, palette);
		bar().button(Messages.of("hole.before"), Messages.of("hole.before"), () -> step(-1));
		bar().button(Messages.of("hole.next"), Messages.of("hole.next"), () -> step(1));
		bar().label(Messages.of("hole.choice"));
		choice = new Combo(bar().row(), SWT.READ_ONLY);
		choice.addListener(SWT.Selection, event -> choose(choice.getSelectionIndex()));
		Bar.name(choice, Messages.of("hole.choice"));
		drawing(Messages.of("hole.name"), new Touches());
		setPalette(palette);
	}

	/** Shows a layout; the hole that is chosen stays so. */
	public void show(Layout layout) {
		editing.show(layout);
	}

	/** Shows the section through an item of the layout; what has no hole is passed over. */
	public void choose(String id) {
		editing.choose(id);
	}

	/** What is done in it. */
	public HoleSectionEditing editing() {
		return editing;
	}

	/** Where a size is in the window of the drawing, if it is drawn. */
	public Optional<Rectangle> place(HoleSize size) {
		return canvas().targets().named(size.id()).map(canvas()::onScreen);
	}

	/** Told changes of the text, each as one step. */
	public void onEdit(Consumer<List<TextEdit>> listener) {
		onEdit = listener;
	}

	/** Told which hole the user goes to. */
	public void onChoose(Consumer<LayoutItem> listener) {
		onChoose = listener;
	}

	private void step(int places) {
		if (choice.getItemCount() > 0) {
			choose(Math.floorMod(choice.getSelectionIndex() + places, choice.getItemCount()));
		}
	}

	private void choose(int index) {
		LayoutItem item = editing.holes().get(index);
		editing.choose(item.id());
		onChoose.accept(item);
	}

	@Override
	void redrawn() {
		canvas().setSource(aspect -> HoleSectionScene.draw(editing, palette()));
		List<String> labels = editing.holes().stream().map(LayoutItem::label).toList();
		if (!labels.equals(listed)) {
			listed = labels;
			choice.setItems(labels.toArray(String[]::new));
			choice.requestLayout();
		}
		editing.section().ifPresent(section -> choice
				.select(editing.holes().stream().map(LayoutItem::id).toList().indexOf(section.item().id())));
		tell(words());
	}

	private String words() {
		return editing.layout().fault().map(fault -> Messages.of("layout.broken", fault)).or(editing::figure)
				.orElseGet(() -> Messages.of("hole.status"));
	}

	private void type(HoleSize size) {
		editing.section().map(section -> section.sizes().get(size))
				.filter(measure -> measure.isEditable() && editing.layout().isEditable())
				.ifPresent(measure -> canvas().targets().named(size.id()).ifPresent(target -> new NameField(canvas(),
						canvas().onScreen(target), Messages.of("hole.type", size.inWords()),
						Figures.millimetres(measure.length()), typed -> take(size, typed))));
	}

	private void take(HoleSize size, String typed) {
		if (!editing.type(size, typed)) {
			tell(Messages.of("hole.noLength", typed));
		}
	}

	private final class Touches implements SceneListener {

		@Override
		public void opened(String id) {
			HoleSize.of(id).ifPresent(HoleSectionControl.this::type);
		}

		@Override
		public void focused(String id) {
			tell(canvas().meaning(id).replace('\n', ' '));
		}

		@Override
		public void touched(String id, boolean adding) {
			focused(id);
		}

		@Override
		public void cleared() {
			editing.cancel();
		}

		@Override
		public boolean grabbed(Optional<String> id, double x, double y, boolean linking) {
			return id.flatMap(HoleSize::of).filter(size -> editing.grab(size, x, y)).isPresent();
		}

		@Override
		public void carried(double x, double y) {
			editing.drag(x, y);
		}

		@Override
		public void released(Optional<String> over) {
			editing.drop();
		}

		@Override
		public boolean typed(KeyEvent key) {
			Optional<HoleSize> size = canvas().focus().flatMap(HoleSize::of);
			if (size.isPresent() && (key.keyCode == SWT.CR || key.keyCode == SWT.KEYPAD_CR)) {
				type(size.get());
				return true;
			}
			int way = (key.stateMask & SWT.MOD1) == 0 ? 0 : switch (key.keyCode) {
			case SWT.ARROW_UP, SWT.ARROW_RIGHT -> 1;
			case SWT.ARROW_DOWN, SWT.ARROW_LEFT -> -1;
			default -> 0;
			};
			size.filter(focused -> way != 0)
					.ifPresent(focused -> editing.nudge(focused, (key.stateMask & SWT.MOD2) != 0 ? way * FAR : way));
			return way != 0;
		}
	}
}

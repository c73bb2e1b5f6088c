package padwright.views.canvas;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Menu;

import padwright.drawing.scene.Scene;
import padwright.language.edit.TextEdit;
import padwright.views.Messages;
import padwright.views.Palette;
import padwright.views.layout.Layout;
import padwright.views.layout.LayoutEditing;
import padwright.views.layout.LayoutItem;
import padwright.views.layout.LayoutLink;
import padwright.views.layout.LayoutListener;
import padwright.views.layout.LayoutPicture;
import padwright.views.layout.LayoutScene;
import padwright.views.layout.LayoutTool;

/**
 * The layout of a system to be drawn in: tools above, the drawing, and what is being done below. Letters take the tools,
 * Enter places or couples, Ctrl with the arrows moves by a tenth of a millimetre or a degree (with Shift by ten times that),
 * F2 renames, Delete deletes, I makes what is changed here as it is inherited.
 */
public final class LayoutControl extends DrawingControl {

	/** How near a place must be to be meant, in points. */
	private static final double REACH = 6;

	private final LayoutEditing editing = new LayoutEditing(new Changes());
	private final Map<LayoutTool, Button> tools = new EnumMap<>(LayoutTool.class);
	private Set<String> lastChosen = Set.of();
	private Optional<String> linkFrom = Optional.empty();
	private Optional<Menu> choice = Optional.empty();
	private Consumer<List<TextEdit>> onEdit = edits -> {
	};
	private Consumer<List<LayoutItem>> onSelect = items -> {
	};
	private Consumer<LayoutItem> onOpen = item -> {
	};
	private Consumer<Layout> onShown = layout -> {
	};
	private BiConsumer<LayoutItem, String> onRename = (item, name) -> {
	};

	public LayoutControl(Composite parent, Palette palette) {
		super(parent, palette);
		for (LayoutTool tool : LayoutTool.values()) {
			tools.put(tool, button(tool));
		}
		drawing(Messages.of("layout.name"), new Touches());
		canvas().setChosen(editing.selected()::contains);
		setPalette(palette);
	}

	private Button button(LayoutTool tool) {
		Button button = new Button(bar().row(), SWT.TOGGLE);
		button.setText(tool.inWords());
		button.setToolTipText(tool.inWords() + " (" + Character.toUpperCase(tool.shortcut()) + ")");
		Bar.name(button, tool.inWords());
		button.addListener(SWT.Selection, event -> take(tool));
		return button;
	}

	/** Shows a layout; what is chosen in it stays chosen. */
	public void show(Layout layout) {
		editing.show(layout);
	}

	/** What is done in it. */
	public LayoutEditing editing() {
		return editing;
	}

	/** The drawing as it is seen. */
	public Scene scene(Palette inks) {
		return LayoutScene.draw(editing.picture().lettered(canvas().readable()), inks);
	}

	/** Where a place of the unrolled tube is in the drawing's window. */
	public Point point(double along, double around) {
		LayoutPicture picture = editing.picture();
		return new Point((int) Math.round(canvas().view().windowX(picture.x(along))),
				(int) Math.round(canvas().view().windowY(picture.y(around))));
	}

	/** The kinds of a coupling that are to be chosen from, while they are. */
	public Optional<Menu> choice() {
		return choice.filter(menu -> !menu.isDisposed());
	}

	/** Told changes of the text, each as one step. */
	public void onEdit(Consumer<List<TextEdit>> listener) {
		onEdit = listener;
	}

	/** Told what the user chooses. */
	public void onSelect(Consumer<List<LayoutItem>> listener) {
		onSelect = listener;
	}

	/** Told what is opened: by a double click, or Enter twice. */
	public void onOpen(Consumer<LayoutItem> listener) {
		onOpen = listener;
	}

	/** Told what is seen, also while something is being dragged. */
	public void onShown(Consumer<Layout> listener) {
		onShown = listener;
	}

	/** Told of something and the name that it is to have. */
	public void onRename(BiConsumer<LayoutItem, String> listener) {
		onRename = listener;
	}

	/** Takes a tool; a coupling goes from what is chosen. */
	public void take(LayoutTool tool) {
		linkFrom = tool == LayoutTool.LINK ? editing.selected().stream().findFirst() : Optional.empty();
		editing.take(tool);
		canvas().setFocus();
	}

	/** Lets the name of what is chosen be typed where it stands. */
	public void rename() {
		editing.chosen().stream().findFirst().filter(item -> editing.layout().isEditable()).ifPresent(
				item -> canvas().targets().named(item.id()).ifPresent(target -> new NameField(canvas(), canvas().onScreen(target),
						Messages.of("layout.rename", item.label()), item.thing().getName(),
						name -> onRename.accept(item, name))));
	}

	/** While something is dragged, only that is drawn anew, over a picture of all else. */
	@Override
	void redrawn() {
		LayoutPicture picture = editing.picture();
		if (editing.isDragging()) {
			LayoutPicture read = picture.lettered(canvas().readable());
			canvas().setMoving(() -> LayoutScene.still(read, palette()), LayoutScene.moving(read, palette()));
			tell(words());
			return;
		}
		canvas().setSource(aspect -> LayoutScene.draw(picture.lettered(canvas().readable()), palette()));
		focusOnChoice();
		tools.forEach((tool, button) -> {
			button.setSelection(tool == editing.tool());
			button.setForeground(Colours.of(tool == editing.tool() ? palette().accent() : palette().ink()));
		});
		tell(words());
	}

	/** What is chosen alone has the focus of the keyboard, so that the arrows go on from there. */
	private void focusOnChoice() {
		Set<String> chosen = Set.copyOf(editing.selected());
		if (!chosen.equals(lastChosen) && chosen.size() == 1) {
			canvas().setFocusOn(chosen.stream().findFirst());
		}
		lastChosen = chosen;
	}

	private String words() {
		Optional<String> first = editing.layout().fault().map(fault -> Messages.of("layout.broken", fault)).or(editing::figure);
		if (first.isPresent()) {
			return first.get();
		}
		if (editing.tool() == LayoutTool.LINK) {
			return linkFrom.flatMap(editing.layout()::item)
					.map(from -> Messages.of("layout.status.linkFrom", from.label()))
					.orElseGet(() -> Messages.of("layout.status.link"));
		}
		if (editing.tool() != LayoutTool.CHOOSE) {
			return Messages.of("layout.status.place");
		}
		List<LayoutItem> chosen = editing.chosen();
		return chosen.size() == 1 ? canvas().meaning(chosen.get(0).id()).replace('\n', ' ')
				: chosen.isEmpty() ? Messages.of("layout.status.choose") : Messages.of("layout.several", chosen.size());
	}

	private final class Changes implements LayoutListener {

		@Override
		public void changed() {
			redrawn();
			onShown.accept(editing.shown());
		}

		@Override
		public void write(List<TextEdit> edits) {
			onEdit.accept(edits);
		}

		@Override
		public void choose(String from, String to, List<LayoutLink.Kind> kinds) {
			choice.ifPresent(Menu::dispose);
			choice = Optional.of(LinkMenu.open(canvas(), kinds, kind -> editing.link(new LayoutLink(from, to, kind))));
		}
	}

	private final class Touches implements SceneListener {

		@Override
		public void touched(String id, boolean adding) {
			if (editing.tool() == LayoutTool.LINK && linkFrom.isPresent()) {
				editing.link(linkFrom.get(), id);
				linkFrom = Optional.empty();
			} else {
				editing.touch(id, adding);
				linkFrom = editing.tool() == LayoutTool.LINK ? Optional.of(id) : Optional.empty();
				onSelect.accept(editing.chosen());
			}
		}

		@Override
		public void opened(String id) {
			editing.layout().item(id).ifPresent(onOpen);
		}

		@Override
		public void cleared() {
			editing.cancel();
			editing.select(Set.of());
		}

		@Override
		public boolean clicked(double x, double y, boolean adding) {
			boolean isChoice = editing.tool() == LayoutTool.CHOOSE;
			boolean isUsed = editing.click(x, y, adding);
			if (isUsed && isChoice) {
				onSelect.accept(editing.chosen());
			}
			return isUsed;
		}

		@Override
		public boolean grabbed(Optional<String> id, double x, double y, boolean linking) {
			editing.grab(id, x, y, linking);
			return true;
		}

		@Override
		public void carried(double x, double y) {
			editing.drag(x, y, REACH / canvas().view().scale());
		}

		@Override
		public void released(Optional<String> over) {
			editing.drop(over);
		}

		@Override
		public boolean typed(KeyEvent key) {
			return new LayoutKeys(LayoutControl.this).typed(key);
		}
	}
}

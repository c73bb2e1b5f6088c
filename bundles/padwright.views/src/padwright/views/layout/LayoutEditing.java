package padwright.views.layout;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

import padwright.engine.length.Length;
import padwright.language.edit.TextEdit;
import padwright.model.keysystem.Titled;

/**
 * What is being done in a layout: what is chosen, what is being dragged, and with which tool. What is done goes to the text
 * as edits; the layout changes when its text was read anew. Without a display.
 */
public final class LayoutEditing {

	private static final Length STEP = Length.millimetres("0.1");
	private static final Length NEXT = Length.millimetres("20");

	private final LayoutListener listener;
	private Layout layout = Layout.empty();
	private final Set<String> selected = new LinkedHashSet<>();
	private LayoutTool tool = LayoutTool.CHOOSE;
	private Optional<LayoutDrag> drag = Optional.empty();
	private Optional<LayoutDrag.Way> way = Optional.empty();
	private Optional<LayoutStretch> stretch = Optional.empty();
	private Optional<String> awaited = Optional.empty();

	public LayoutEditing(LayoutListener listener) {
		this.listener = listener;
	}

	/** Shows a layout, or the same one read anew: the choice stays, and what was added is chosen. */
	public void show(Layout anew) {
		layout = anew;
		drag = Optional.empty();
		way = Optional.empty();
		awaited.filter(id -> anew.item(id).isPresent()).ifPresent(id -> {
			selected.clear();
			selected.add(id);
			awaited = Optional.empty();
		});
		selected.removeIf(id -> anew.item(id).isEmpty());
		listener.changed();
	}

	/** Chooses something under its new name once it is read anew. */
	public void await(LayoutItem item, String name) {
		awaited = Optional.of(item.kind().group() + ":" + name);
	}

	/** As it is drawn: with what is being dragged where it would go. */
	public Layout shown() {
		return way.map(there -> layout.moved(there.items())).orElse(layout);
	}

	public Layout layout() {
		return layout;
	}

	public LayoutTool tool() {
		return tool;
	}

	public void take(LayoutTool other) {
		tool = other;
		listener.changed();
	}

	/** Ids of what is chosen, in the order in which it was. */
	public Set<String> selected() {
		return Collections.unmodifiableSet(selected);
	}

	/** What is chosen, in the order in which it was. */
	public List<LayoutItem> chosen() {
		return selected.stream().flatMap(id -> layout.item(id).stream()).toList();
	}

	/** Whether something is chosen that a change may be taken back of. */
	public boolean canBeAsInherited() {
		return chosen().stream().anyMatch(item -> item.origin() == LayoutOrigin.CHANGED);
	}

	public void select(Set<String> ids) {
		selected.clear();
		selected.addAll(ids);
		listener.changed();
	}

	/** Chooses one thing, or one more; what is chosen already is let go of. */
	public void touch(String id, boolean adding) {
		if (!adding) {
			selected.clear();
		}
		if (!selected.remove(id)) {
			selected.add(id);
		}
		listener.changed();
	}

	/** A click at a point: of the tool, or on what is seen from the side; false if it is for what else is there. */
	public boolean click(double x, double y, boolean adding) {
		Optional<LayoutItem> seen = tool == LayoutTool.CHOOSE ? fromTheSide(x, y) : Optional.empty();
		seen.ifPresent(item -> touch(item.id(), adding));
		return seen.isPresent() || place(x, y);
	}

	private Optional<LayoutItem> fromTheSide(double x, double y) {
		return new SideGeometry(layout, LayoutGeometry.of(layout)).at(x, y);
	}

	private boolean place(double x, double y) {
		Optional<LayoutKind> kind = tool.places().filter(placed -> layout.isEditable());
		LayoutGeometry geometry = LayoutGeometry.of(layout);
		kind.ifPresent(placed -> {
			long tenths = Math.round(geometry.along(x) * 10);
			double around = geometry.isUnrolled(y) ? geometry.around(y) : 0;
			add(placed, Length.ofNanometres(Math.max(0, tenths) * STEP.nanometres()),
					BigDecimal.valueOf(Math.round(around)));
			tool = LayoutTool.CHOOSE;
		});
		return kind.isPresent();
	}

	/** Adds something beside what is chosen, or in the middle of the tube. */
	public void add(LayoutKind kind) {
		Optional<LayoutItem> beside = chosen().stream().filter(item -> item.along().isPresent()).findFirst();
		Length middle = Length.ofNanometres(layout.length().nanometres() / STEP.nanometres() / 2 * STEP.nanometres());
		add(kind, beside.map(item -> item.along().orElseThrow().plus(NEXT)).orElse(middle),
				beside.map(LayoutItem::around).orElse(BigDecimal.ZERO));
	}

	private void add(LayoutKind kind, Length along, BigDecimal around) {
		write(texts -> {
			String name = texts.freeName(kind.firstName());
			awaited = Optional.of(kind.group() + ":" + name);
			return texts.added(kind, name, along, around, selected);
		});
	}

	/**
	 * The mouse went down at a point and begins to move.
	 *
	 * @param id of what is there
	 * @param linking whether it draws to another thing instead of dragging, whatever the tool is
	 */
	public void grab(Optional<String> id, double x, double y, boolean linking) {
		Optional<LayoutItem> item = id.flatMap(layout::item).or(() -> fromTheSide(x, y));
		if (item.isEmpty() || linking || tool == LayoutTool.LINK) {
			stretch = Optional.of(new LayoutStretch(item.map(LayoutItem::id), x, y, x, y));
		} else if (layout.isEditable()) {
			if (!selected.contains(item.get().id())) {
				touch(item.get().id(), false);
			}
			Set<Titled> placed = new LinkedHashSet<>(chosen().stream().map(LayoutItem::placed).toList());
			drag = Optional.of(new LayoutDrag(layout, LayoutGeometry.of(layout), item.get(),
					layout.items().stream().filter(each -> placed.contains(each.placed())).toList(), x, y));
		}
	}

	/** The mouse is at a point. */
	public void drag(double x, double y, double reach) {
		way = drag.map(dragged -> dragged.to(x, y, reach));
		stretch = stretch.map(from -> from.to(x, y));
		listener.changed();
	}

	/** The mouse was let go over something. */
	public void drop(Optional<String> over) {
		Optional<LayoutDrag.Way> went = way;
		Optional<LayoutStretch> stretched = stretch;
		drag = Optional.empty();
		way = Optional.empty();
		stretch = Optional.empty();
		went.ifPresent(there -> write(texts -> texts.moved(there.items())));
		stretched.ifPresent(from -> from.from().ifPresentOrElse(id -> over.ifPresent(to -> link(id, to)),
				() -> select(LayoutGeometry.of(layout).inside(layout, from.bounds()))));
		listener.changed();
	}

	/** Forgets what is being dragged or drawn. */
	public void cancel() {
		drag = Optional.empty();
		way = Optional.empty();
		stretch = Optional.empty();
		tool = LayoutTool.CHOOSE;
		listener.changed();
	}

	public boolean isDragging() {
		return drag.isPresent() || stretch.isPresent();
	}

	/** Draws from one thing to another; where that can mean several things, the listener is asked. */
	public void link(String from, String to) {
		List<LayoutLink.Kind> kinds = kinds(from, to);
		if (kinds.size() == 1) {
			link(new LayoutLink(from, to, kinds.get(0)));
		} else if (!kinds.isEmpty()) {
			listener.choose(from, to, kinds);
		}
	}

	private List<LayoutLink.Kind> kinds(String from, String to) {
		Optional<LayoutItem> driver = layout.item(from);
		Optional<LayoutItem> driven = layout.item(to);
		if (driver.isEmpty() || driven.isEmpty() || from.equals(to) || !layout.isEditable()) {
			return List.of();
		}
		boolean isTouch = driver.get().kind() == LayoutKind.TOUCH;
		if (isTouch) {
			return driven.get().isKey() || driven.get().kind() == LayoutKind.HOLE ? List.of(LayoutLink.Kind.PRESSES)
					: List.of();
		}
		return driver.get().isKey() && driven.get().isKey()
				? List.of(LayoutLink.Kind.CLOSES, LayoutLink.Kind.OPENS, LayoutLink.Kind.HOLDS) : List.of();
	}

	/** Writes what one does to another; nothing where that is said already. */
	public void link(LayoutLink link) {
		if (!layout.links().contains(link)) {
			write(texts -> texts.linked(link));
		}
		tool = LayoutTool.CHOOSE;
	}

	/** Moves what is chosen by steps of a tenth of a millimetre and by degrees. */
	public void nudge(int tenths, int degrees) {
		List<LayoutItem> moved = new ArrayList<>();
		for (LayoutItem item : chosen()) {
			item.along().map(place -> place.plus(STEP.times(tenths))).filter(place -> place.signum() >= 0)
					.ifPresent(place -> moved.add(item.at(place, item.around().add(BigDecimal.valueOf(degrees)))));
		}
		write(texts -> texts.moved(moved));
	}

	public void arrange(Arrangement arrangement) {
		write(texts -> texts.moved(arrangement.of(chosen())));
	}

	public void delete() {
		List<Titled> things = chosen().stream().map(LayoutItem::thing).toList();
		write(texts -> things.isEmpty() ? List.of() : texts.deleted(things));
	}

	/** Takes the changes of what is chosen back. */
	public void asInherited() {
		write(texts -> texts.asInherited(chosen().stream().map(LayoutItem::placed).toList()));
	}

	/** What is chosen as it is written. */
	public String copied() {
		return LayoutClipboard.text(chosen());
	}

	/** Adds statements as they were copied, under names that are free. */
	public void paste(String text) {
		write(texts -> new LayoutClipboard(texts).paste(text));
	}

	private void write(Function<LayoutTexts, List<TextEdit>> change) {
		if (!layout.isEditable()) {
			return;
		}
		List<TextEdit> edits = change.apply(new LayoutTexts(layout));
		if (!edits.isEmpty()) {
			listener.write(edits);
		}
	}

	/** What is being dragged, with the figures of its place. */
	public Optional<String> figure() {
		return way.map(there -> LayoutWords.place(layout, there.anchor()) + LayoutWords.reason(there));
	}

	private Set<String> moving() {
		return drag.map(dragged -> dragged.all().stream().map(LayoutItem::id).collect(Collectors.toSet())).orElse(Set.of());
	}

	/** All that there is to draw. */
	public LayoutPicture picture() {
		return new LayoutPicture(shown(), LayoutGeometry.of(layout), new LinkedHashSet<>(selected),
				way.map(LayoutDrag.Way::anchor), figure(), moving(), stretch, LayoutMotion.REST, 0);
	}
}

package padwright.views.hole;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.language.edit.TextEdit;
import padwright.views.Figures;
import padwright.views.Messages;
import padwright.views.layout.Layout;
import padwright.views.layout.LayoutItem;

/**
 * What is being done in the section through a hole: its sizes are dragged, moved by steps, or typed. What is done goes to the
 * text as edits; the section changes when its text was read anew. Without a display.
 */
public final class HoleSectionEditing {

	private static final Length STEP = Length.millimetres("0.1");
	private static final Length LONGEST = Length.millimetres("200");

	private final Runnable onChange;
	private final Consumer<List<TextEdit>> onWrite;
	private Layout layout = Layout.empty();
	private Optional<String> chosen = Optional.empty();
	private Optional<HoleSection> section = Optional.empty();
	private Optional<Drag> drag = Optional.empty();

	/** A size on its way. */
	private record Drag(HoleSize size, int side, double x, double y, Length length) {
	}

	/**
	 * @param onChange called when something is to be shown anew
	 * @param onWrite told changes of the text that the layout was read from, each as one step
	 */
	public HoleSectionEditing(Runnable onChange, Consumer<List<TextEdit>> onWrite) {
		this.onChange = onChange;
		this.onWrite = onWrite;
	}

	/** Shows a layout, or the same one read anew: the hole that is chosen stays so while it is there. */
	public void show(Layout anew) {
		layout = anew;
		drag = Optional.empty();
		read();
	}

	/** Shows the section through another item; what has no hole is passed over. */
	public void choose(String id) {
		if (HoleSection.of(layout, id).isPresent()) {
			chosen = Optional.of(id);
			read();
		}
	}

	/** The first hole, until one is chosen. */
	private void read() {
		section = chosen.flatMap(id -> HoleSection.of(layout, id))
				.or(() -> holes().stream().findFirst().flatMap(first -> HoleSection.of(layout, first.id())));
		onChange.run();
	}

	/** All that can be chosen, from the upper end down. */
	public List<LayoutItem> holes() {
		return HoleSection.holes(layout);
	}

	public Layout layout() {
		return layout;
	}

	/** As it is drawn: with the size that is being dragged as it would be. */
	public Optional<HoleSection> section() {
		return section.map(drawn -> drag.map(way -> drawn.with(way.size(), way.length())).orElse(drawn));
	}

	/** As it was before anything was dragged. */
	Optional<HoleSection> still() {
		return section;
	}

	/** The size that is being dragged. */
	Optional<HoleSize> dragged() {
		return drag.map(Drag::size);
	}

	private Optional<HoleMeasure> editable(HoleSize size) {
		return section.filter(drawn -> layout.isEditable()).map(drawn -> drawn.sizes().get(size))
				.filter(HoleMeasure::isEditable);
	}

	/** The mouse went down on a size, at a point of the drawing, and begins to move; false if it cannot be dragged. */
	public boolean grab(HoleSize size, double x, double y) {
		drag = editable(size).map(measure -> new Drag(size,
				x < HoleSectionScene.middle(section.orElseThrow()) ? -1 : 1, x, y, measure.length()));
		return drag.isPresent();
	}

	/** The mouse is at a point of the drawing. */
	public void drag(double x, double y) {
		drag = drag.map(from -> {
			double growth = from.size().growth(x - from.x(), y - from.y(), from.side(), section.orElseThrow().hinge());
			double tenths = section.orElseThrow().mm(from.size()) * 10 + growth * 10;
			return new Drag(from.size(), from.side(), from.x(), from.y(), fitting(STEP.times(Math.round(tenths))));
		});
		onChange.run();
	}

	/** The mouse was let go. */
	public void drop() {
		Optional<Drag> went = drag;
		drag = Optional.empty();
		went.ifPresent(way -> put(way.size(), way.length()));
		onChange.run();
	}

	/** Forgets what is being dragged. */
	public void cancel() {
		drag = Optional.empty();
		onChange.run();
	}

	/** Makes a size larger, or smaller, by tenths of a millimetre. */
	public void nudge(HoleSize size, int tenths) {
		editable(size).ifPresent(measure -> put(size, fitting(measure.length().plus(STEP.times(tenths)))));
	}

	/** Makes a size what was typed, in mm; false for what can be none. */
	public boolean type(HoleSize size, String millimetres) {
		Optional<Length> typed = length(millimetres);
		typed.ifPresent(length -> put(size, length));
		return typed.isPresent();
	}

	private static Optional<Length> length(String millimetres) {
		try {
			return Optional.of(Length.of(new BigDecimal(millimetres.strip().replace(',', '.')), LengthUnit.MILLIMETRE))
					.filter(length -> length.signum() > 0 && !length.isLongerThan(LONGEST));
		} catch (NumberFormatException | ArithmeticException noLength) {
			return Optional.empty();
		}
	}

	private static Length fitting(Length length) {
		return length.isShorterThan(STEP) ? STEP : length.isLongerThan(LONGEST) ? LONGEST : length;
	}

	private void put(HoleSize size, Length length) {
		editable(size).filter(measure -> !measure.isKnown() || !measure.length().equals(length))
				.ifPresent(measure -> onWrite.accept(new HoleSectionTexts(section.orElseThrow()).put(size, length)));
	}

	/** A size with its figure, as in {@code Rim 1.2 mm}. */
	public Optional<String> figure() {
		return drag.map(way -> Messages.of("hole.figure", way.size().inWords(), Figures.millimetres(way.length())));
	}
}

package padwright.views.sound;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import padwright.engine.length.Length;
import padwright.engine.mechanism.Pressing;
import padwright.model.keysystem.KeySystem;
import padwright.views.Messages;
import padwright.views.layout.Layout;
import padwright.views.layout.LayoutItem;
import padwright.workup.sound.ToneSound;

/**
 * What the view of a system's sound shows: its notes, the one that is chosen or pressed, and what is being dragged. What is
 * to be worked out is {@link #wish}; until the answer is there the last one stays. Without a display, of one thread.
 */
public final class SoundSession {

	private Optional<KeySystem> system = Optional.empty();
	private Layout layout = Layout.empty();
	private Map<String, Length> moved = Map.of();
	private Optional<String> note = Optional.empty();
	private Optional<Pressing> pressed = Optional.empty();
	private Optional<ScaleHeard> still = Optional.empty();
	private Optional<ScaleHeard> scale = Optional.empty();
	private Optional<CurveHeard> curve = Optional.empty();

	/**
	 * Shows a system, or the same one read anew, or none.
	 *
	 * @param drawn its layout as it is written; empty where it cannot be dragged in
	 */
	public void show(Optional<KeySystem> shown, Layout drawn) {
		boolean isAnother = shown.isEmpty() || system.filter(before -> isSameName(before, shown.get())).isEmpty();
		if (isAnother) {
			still = Optional.empty();
			scale = Optional.empty();
			curve = Optional.empty();
			note = Optional.empty();
			pressed = Optional.empty();
		}
		system = shown;
		layout = drawn;
		moved = Map.of();
	}

	private static boolean isSameName(KeySystem one, KeySystem other) {
		return one.getName() != null && one.getName().equals(other.getName());
	}

	/** Something is where it is being dragged to. True if that changes what is to be worked out. */
	public boolean drag(Layout shown) {
		Map<String, Length> by = movesIn(shown);
		boolean isChange = !by.equals(moved);
		moved = by;
		return isChange;
	}

	/** Whether something is elsewhere than it is written. */
	public boolean moves(Layout shown) {
		return !movesIn(shown).isEmpty();
	}

	private Map<String, Length> movesIn(Layout shown) {
		if (layout.system().isEmpty() || !shown.system().equals(layout.system())) {
			return Map.of();
		}
		Map<String, Length> moves = new LinkedHashMap<>();
		for (LayoutItem item : shown.items()) {
			Optional<Length> from = layout.item(item.id()).flatMap(LayoutItem::along);
			from.flatMap(was -> item.along().map(is -> is.minus(was))).filter(by -> by.signum() != 0)
					.ifPresent(by -> moves.put(item.placed().getName(), by));
		}
		return moves;
	}

	/** Chooses a note by its name. */
	public void choose(String name) {
		note = Optional.of(name);
		pressed = Optional.empty();
	}

	/** Touches are pressed elsewhere: as a note where one is shown there. */
	public void press(Optional<String> shown, Pressing touches) {
		note = shown.or(() -> note);
		pressed = shown.isPresent() ? Optional.empty() : Optional.of(touches);
	}

	/** Chooses the note so many places behind the one that is shown; from the last it goes on with the first. */
	public void walk(int step) {
		List<String> names = notes().stream().map(each -> each.tone().name()).toList();
		if (!names.isEmpty()) {
			int at = Math.max(0, names.indexOf(chosen().orElse("")));
			choose(names.get(pressed.isPresent() ? at : Math.floorMod(at + step, names.size())));
		}
	}

	/** What is to be worked out; nothing where no system is shown. */
	public Optional<SoundWish> wish() {
		return system.map(known -> new SoundWish(known, moved, note, pressed));
	}

	/** All fingerings as they were worked out. */
	public void accept(ScaleHeard answer) {
		if (isOf(answer.wish())) {
			scale = Optional.of(answer);
			still = answer.wish().moved().isEmpty() ? scale : still;
		}
	}

	/** The chosen fingering as it was worked out. */
	public void accept(CurveHeard answer) {
		if (isOf(answer.wish())) {
			curve = Optional.of(answer);
		}
	}

	private boolean isOf(SoundWish wish) {
		return system.filter(shown -> shown == wish.system()).isPresent();
	}

	/** In the order of the system. */
	public List<ToneSound> notes() {
		return scale.map(ScaleHeard::notes).orElse(List.of());
	}

	/** How a note sounds as it is shown. */
	public Optional<ToneSound> note(String name) {
		return scale.flatMap(all -> all.note(name));
	}

	/** The note that is chosen; nothing where touches are pressed. */
	public Optional<String> chosen() {
		return pressed.isPresent() ? Optional.empty() : note.filter(name -> note(name).isPresent())
				.or(() -> notes().stream().findFirst().map(first -> first.tone().name()));
	}

	/** Whether holes are elsewhere than they are written. */
	public boolean isDragging() {
		return !moved.isEmpty();
	}

	Optional<ScaleHeard> scale() {
		return scale;
	}

	/** As it sounds with all holes where they are written. */
	Optional<ScaleHeard> still() {
		return still;
	}

	/** The chosen fingering. */
	public Optional<CurveHeard> curve() {
		return curve;
	}

	/** The names of the usual fingerings, by which the scale is judged. */
	Set<String> usual() {
		return scale.flatMap(ScaleHeard::scale).map(all -> all.scale().stream().map(each -> each.tone().name())
				.collect(Collectors.toSet())).orElse(Set.of());
	}

	/** What is said of the chosen note, or of what is pressed, or why nothing is shown. */
	public String words() {
		if (!why().isEmpty()) {
			return why();
		}
		if (pressed.isPresent()) {
			return curve.map(SoundWords::pressed).orElse("");
		}
		return chosen().flatMap(this::note).map(chosen -> SoundWords.note(chosen, before(chosen))).orElse("");
	}

	/** How a note sounded before something was dragged; nothing while nothing is. */
	Optional<ToneSound> before(ToneSound dragged) {
		return still.filter(was -> isDragging()).flatMap(was -> was.note(dragged.tone().name()));
	}

	/** In words why nothing is shown; empty while something is. */
	private String why() {
		if (system.isEmpty()) {
			return Messages.of("sound.nothing");
		}
		return scale.filter(all -> all.scale().isEmpty()).map(ScaleHeard::why).orElse("");
	}
}

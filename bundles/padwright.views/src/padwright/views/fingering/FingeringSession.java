package padwright.views.fingering;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import padwright.engine.mechanism.HoleState;
import padwright.engine.mechanism.MechanismState;
import padwright.engine.mechanism.Pressing;
import padwright.engine.pitch.NoteName;
import padwright.language.edit.NoteEdits;
import padwright.language.edit.TextEdit;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.Purpose;
import padwright.model.systems.EffectiveSystem;
import padwright.model.systems.EffectiveTouch;
import padwright.views.layout.Layout;
import padwright.views.layout.LayoutMotion;
import padwright.workup.mechanism.ClashPhrase;
import padwright.workup.mechanism.SystemFingering;
import padwright.workup.mechanism.SystemMechanism;
import padwright.workup.words.Phrase;

/** Touches of a system that are pressed to see what moves, and its notes one after the other. Without a display. */
public final class FingeringSession {

	private Layout layout = Layout.empty();
	private Optional<SystemMechanism> mechanism = Optional.empty();
	private final Set<String> pressed = new LinkedHashSet<>();
	private final Set<String> half = new LinkedHashSet<>();
	private Optional<String> note = Optional.empty();

	/** Shows a system, or the same one read anew: what is pressed stays so, if it is still there. */
	public void show(Layout anew) {
		layout = anew;
		mechanism = anew.system().map(EffectiveSystem::of).map(SystemMechanism::of);
		Set<String> there = touches().stream().map(EffectiveTouch::name).collect(Collectors.toSet());
		pressed.retainAll(there);
		half.retainAll(there);
		note = note.filter(name -> fingering(name).isPresent());
	}

	public Layout layout() {
		return layout;
	}

	/** In the order of the system. */
	public List<EffectiveTouch> touches() {
		return mechanism.stream().flatMap(all -> all.system().touches().stream())
				.filter(touch -> touch.name() != null && !touch.name().isBlank()).toList();
	}

	/** Presses a touch, or half, or lets it go: one after the other. */
	public void press(String touch, boolean halfway) {
		boolean isDown = halfway ? half.remove(touch) : pressed.remove(touch);
		pressed.remove(touch);
		half.remove(touch);
		if (!isDown) {
			(halfway ? half : pressed).add(touch);
		}
		note = Optional.empty();
	}

	public boolean isPressed(String touch) {
		return pressed.contains(touch) || half.contains(touch);
	}

	public boolean isHalf(String touch) {
		return half.contains(touch);
	}

	/** The name of the note that is shown; nothing once another touch is pressed. */
	public Optional<String> note() {
		return note;
	}

	/** In the order of the system. */
	public List<SystemFingering> fingerings() {
		return mechanism.map(SystemMechanism::fingerings).orElse(List.of());
	}

	private Optional<SystemFingering> fingering(String name) {
		return fingerings().stream().filter(each -> each.name().equals(name)).findFirst();
	}

	/** Shows the note that comes so many places behind the one that is shown; from the last it goes on with the first. */
	public void walk(int step) {
		List<SystemFingering> all = fingerings();
		if (!all.isEmpty()) {
			int at = note.flatMap(this::fingering).map(all::indexOf).orElse(step > 0 ? -1 : 0);
			finger(all.get(Math.floorMod(at + step, all.size())));
		}
	}

	private void finger(SystemFingering fingering) {
		pressed.clear();
		half.clear();
		pressed.addAll(fingering.pressing().touches());
		half.addAll(fingering.pressing().half());
		note = Optional.of(fingering.name());
	}

	private Optional<MechanismState> state() {
		return mechanism.map(all -> all.mechanism().state(pressing()));
	}

	/** What is pressed of what the mechanism has. */
	public Pressing pressing() {
		Set<String> known = mechanism.map(all -> all.mechanism().touches().stream().map(touch -> touch.name())
				.collect(Collectors.toSet())).orElse(Set.of());
		return new Pressing(kept(pressed, known), kept(half, known), Set.of());
	}

	private static Set<String> kept(Set<String> some, Set<String> known) {
		return some.stream().filter(known::contains).collect(Collectors.toCollection(LinkedHashSet::new));
	}

	/** What moves and what is shut. */
	public LayoutMotion motion() {
		return state().map(state -> {
			SystemMechanism all = mechanism.orElseThrow();
			Set<String> shut = Stream.concat(all.closedPads(state).stream().map(key -> "key:" + key),
					state.holes(HoleState.CLOSED).stream().map(hole -> "hole:" + hole))
					.filter(id -> layout.item(id).isPresent()).collect(Collectors.toSet());
			return new LayoutMotion(ids("touch:", Stream.concat(pressed.stream(), half.stream())),
					ids("key:", all.moved(state).stream()), shut, true);
		}).orElse(LayoutMotion.REST);
	}

	private static Set<String> ids(String kind, Stream<String> names) {
		return names.map(name -> kind + name).collect(Collectors.toSet());
	}

	/** The holes that stay open, from the head down. */
	public List<String> open() {
		return state().map(state -> List.copyOf(state.holes(HoleState.OPEN))).orElse(List.of());
	}

	/** What cannot be. */
	public List<Phrase> contradictions() {
		return state().map(state -> state.contradictions().stream().map(ClashPhrase::of).toList()).orElse(List.of());
	}

	/** The semitones between the lowest and the highest note that have no fingering, upwards. */
	public List<String> missing() {
		TreeSet<Integer> there = new TreeSet<>();
		for (SystemFingering each : fingerings()) {
			if (each.cents().compareTo(BigDecimal.ZERO) == 0) {
				midi(each.note()).ifPresent(there::add);
			}
		}
		List<String> missing = new ArrayList<>();
		for (int midi = there.isEmpty() ? 0 : there.first(); !there.isEmpty() && midi < there.last(); midi++) {
			if (!there.contains(midi)) {
				missing.add(NoteName.ofMidi(midi).toString());
			}
		}
		return missing;
	}

	private static Optional<Integer> midi(String name) {
		try {
			return Optional.of(NoteName.parse(name).midi());
		} catch (IllegalArgumentException noNote) {
			return Optional.empty();
		}
	}

	/** Whether a text can be a note. */
	public boolean canBeNote(String name) {
		return midi(name).isPresent();
	}

	/**
	 * Writes what is pressed down as a note; nothing where the text has a fault.
	 *
	 * @throws IllegalArgumentException if it can be no note
	 */
	public List<TextEdit> write(String name, Optional<String> label, Purpose purpose) {
		Optional<KeySystem> system = layout.system().filter(drawn -> layout.isEditable());
		List<NoteEdits.Pressed> presses = touches().stream().filter(touch -> isPressed(touch.name()))
				.map(touch -> new NoteEdits.Pressed(touch.definition(), half.contains(touch.name()))).toList();
		return system.map(drawn -> new NoteEdits(drawn).write(new NoteEdits.Written(NoteName.parse(name).toString(), label, purpose, presses)))
				.orElse(List.of());
	}
}

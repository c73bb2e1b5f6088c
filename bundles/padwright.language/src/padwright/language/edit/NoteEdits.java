package padwright.language.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import padwright.model.keysystem.Fingering;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.Purpose;
import padwright.model.keysystem.Touch;
import padwright.model.systems.EffectiveSystem;
import padwright.model.systems.NotePitch;

/** Writes fingerings into the text of a key system. */
public final class NoteEdits {

	/** A finger on a touch, half if it leaves an opening half open. */
	public record Pressed(Touch touch, boolean half) {
	}

	/**
	 * A fingering to write.
	 *
	 * @param note as in {@code C♯4}
	 * @param label what it is called, if anything
	 */
	public record Written(String note, Optional<String> label, Purpose purpose, List<Pressed> presses) {

		public Written {
			presses = List.copyOf(presses);
		}
	}

	private final KeySystem system;
	private final SystemWords words;

	public NoteEdits(KeySystem system) {
		this.system = system;
		words = new SystemWords(system);
	}

	/**
	 * Writes a fingering down. The fingering of this system with the same note, label and purpose is fingered anew; else
	 * it is added, with the fingerings of the note that are inherited, which a note said again would replace.
	 */
	public List<TextEdit> write(Written fingering) {
		Optional<Fingering> same = system.getFingerings().stream().filter(each -> isSame(each, fingering)).findFirst();
		if (same.isPresent()) {
			WrittenClause presses = WrittenClause.of(same.get(), "presses").orElseThrow();
			String anew = presses(fingering.presses());
			return anew.isEmpty() ? presses.takeOut() : List.of(presses.put(anew));
		}
		List<String> lines = new ArrayList<>();
		boolean isNew = system.getFingerings().stream().noneMatch(each -> fingering.note().equals(NotePitch.of(each)));
		if (isNew && fingering.purpose() != Purpose.USUAL) {
			EffectiveSystem.of(system).fingerings().getOrDefault(fingering.note(), List.of())
					.forEach(each -> lines.add(statement(copied(each))));
		}
		lines.add(statement(fingering));
		return List.of(new Statements(system).add(Fingering.class, lines));
	}

	private static boolean isSame(Fingering each, Written fingering) {
		return fingering.note().equals(NotePitch.of(each))
				&& Optional.ofNullable(each.getLabel()).equals(fingering.label())
				&& each.getPurpose() == fingering.purpose();
	}

	private static Written copied(Fingering inherited) {
		return new Written(inherited.getNote(), Optional.ofNullable(inherited.getLabel()), inherited.getPurpose(),
				inherited.getPresses().stream().map(press -> new Pressed(press.getTouch(), press.isHalf())).toList());
	}

	private String statement(Written fingering) {
		String label = fingering.label().map(words::quoted).map(text -> " " + text).orElse("");
		String purpose = fingering.purpose() == Purpose.USUAL ? "" : " " + fingering.purpose().getLiteral();
		return ("note " + fingering.note() + label + purpose + " : " + presses(fingering.presses())).stripTrailing();
	}

	private String presses(List<Pressed> presses) {
		return presses.stream().map(press -> (press.half() ? "half " : "") + words.name(press.touch()))
				.collect(Collectors.joining(" "));
	}
}

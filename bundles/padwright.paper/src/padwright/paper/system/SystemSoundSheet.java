package padwright.paper.system;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import padwright.model.systems.EffectiveSystem;
import padwright.paper.page.HeadText;
import padwright.paper.page.PageFact;
import padwright.paper.sound.SoundMark;
import padwright.paper.sound.SoundSheet;
import padwright.workup.parts.Labels;
import padwright.workup.sound.OctaveSound;
import padwright.workup.sound.ScaleSound;
import padwright.workup.sound.SystemSound;
import padwright.workup.sound.ToneSound;

/** From how a system sounds to its picture. */
public final class SystemSoundSheet {

	private SystemSoundSheet() {
	}

	/** @throws IllegalArgumentException if no note sounds near its pitch */
	public static SoundSheet of(SystemSound system) {
		ScaleSound scale = ScaleSound.of(system);
		String label = Labels.of(system.system());
		Set<ToneSound> usual = new HashSet<>(scale.scale());
		return new SoundSheet(new HeadText(label, "", "How it sounds · " + system.system().getName(), facts(system, scale)),
				"How " + label + " sounds",
				scale.notes().stream().map(note -> mark(note, usual.contains(note))).toList());
	}

	private static List<PageFact> facts(SystemSound system, ScaleSound scale) {
		EffectiveSystem effective = system.mechanism().system();
		List<PageFact> facts = new ArrayList<>();
		facts.add(new PageFact("Pitch", "A %s Hz at %s °C".formatted(effective.pitch().toPlainString(),
				effective.temperature().toPlainString())));
		facts.add(new PageFact("Fingerings", String.valueOf(scale.notes().size())));
		facts.add(new PageFact("Holes", String.valueOf(system.mechanism().holes().size())));
		scale.octaves().stream().filter(octave -> octave.notes().size() > 1).forEach(octave -> facts.add(fact(octave)));
		return facts;
	}

	private static PageFact fact(OctaveSound octave) {
		return new PageFact("Octave " + octave.octave(), String.format(Locale.ROOT, "mean %+.1f, spread %.1f, %s %+.1f",
				octave.mean(), octave.spread(), octave.worst().tone().name(),
				octave.worst().sound().cents().orElseThrow()));
	}

	private static SoundMark mark(ToneSound note, boolean usual) {
		return new SoundMark(note.tone().fingering().note(), note.tone().writtenCents() / 100.0, note.octave(), usual,
				note.sound().cents(), note.sound().strength());
	}
}

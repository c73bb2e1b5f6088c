package padwright.paper.system;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import padwright.model.systems.EffectiveSystem;
import padwright.paper.page.HeadText;
import padwright.paper.page.PageFact;
import padwright.paper.sound.SoundMark;
import padwright.paper.sound.SoundSheet;
import padwright.paper.words.Messages;
import padwright.workup.parts.Labels;
import padwright.workup.report.Figures;
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
		return new SoundSheet(new HeadText(label, "", Messages.of("sound.title") + " · " + system.system().getName(), facts(system, scale)),
				Messages.of("sound.of", label),
				scale.notes().stream().map(note -> mark(note, usual.contains(note))).toList());
	}

	private static List<PageFact> facts(SystemSound system, ScaleSound scale) {
		EffectiveSystem effective = system.mechanism().system();
		List<PageFact> facts = new ArrayList<>();
		facts.add(new PageFact(Messages.of("fact.pitch"), Messages.of("fact.pitchAt", Figures.plain(effective.pitch()),
				Figures.plain(effective.temperature()))));
		facts.add(new PageFact(Messages.of("fact.fingerings"), String.valueOf(scale.notes().size())));
		facts.add(new PageFact(Messages.of("fact.holes"), String.valueOf(system.mechanism().holes().size())));
		scale.octaves().stream().filter(octave -> octave.notes().size() > 1).forEach(octave -> facts.add(fact(octave)));
		return facts;
	}

	private static PageFact fact(OctaveSound octave) {
		return new PageFact(Messages.of("fact.octave", octave.octave()), Messages.of("fact.octaveSpread",
				signed(octave.mean()), Figures.number(octave.spread(), 1), octave.worst().tone().name(),
				signed(octave.worst().sound().cents().orElseThrow())));
	}

	private static String signed(double cents) {
		return (cents < 0 ? "" : "+") + Figures.number(cents, 1);
	}

	private static SoundMark mark(ToneSound note, boolean usual) {
		return new SoundMark(note.tone().fingering().note(), note.tone().writtenCents() / 100.0, note.octave(), usual,
				note.sound().cents(), note.sound().strength());
	}
}

package padwright.commands;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.engine.acoustics.Resonance;
import padwright.exchange.csv.CsvText;
import padwright.workup.sound.ScaleSound;
import padwright.workup.sound.SystemSound;
import padwright.workup.sound.ToneSound;

/** How a system sounds for spreadsheets: a line for each fingering. */
final class SoundCsv {

	private static final List<String> HEAD = List.of("name", "purpose", "octave", "target (Hz)", "sounds (Hz)", "cents",
			"height (dB)", "over next (dB)");

	private SoundCsv() {
	}

	static String of(SystemSound system) {
		List<List<String>> rows = new ArrayList<>(List.of(HEAD));
		ScaleSound.of(system).notes().stream().map(SoundCsv::row).forEach(rows::add);
		return CsvText.write(rows);
	}

	private static List<String> row(ToneSound sound) {
		Optional<Resonance> played = sound.sound().played();
		return List.of(sound.tone().name(), sound.tone().fingering().fingering().getPurpose().getLiteral(),
				String.valueOf(sound.octave()), String.valueOf(sound.tone().note().hertz()),
				cell(played.map(Resonance::hertz)), cell(sound.sound().cents()), cell(played.map(Resonance::decibels)),
				cell(sound.sound().strength()));
	}

	private static String cell(Optional<Double> number) {
		return number.map(String::valueOf).orElse("");
	}
}

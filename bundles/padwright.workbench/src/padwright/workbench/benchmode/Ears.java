package padwright.workbench.benchmode;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

import padwright.views.bench.Told;
import padwright.workbench.prefs.Preferences;

/** Reads back what was typed, as the user prefers: by the system's voice, by a tone, or not at all. */
final class Ears implements Consumer<Told> {

	private final Optional<SystemVoice> voice;
	private final Optional<Tones> tones;

	private Ears(Optional<SystemVoice> voice, Optional<Tones> tones) {
		this.voice = voice;
		this.tones = tones;
	}

	/** Where a voice is preferred but there is none, a tone takes its place. */
	static Ears asPreferred() {
		Preferences.ReadBack preferred = Preferences.readBack();
		Optional<SystemVoice> voice = preferred == Preferences.ReadBack.VOICE
				? SystemVoice.find(System.getenv("PATH"), Locale.getDefault()) : Optional.empty();
		return new Ears(voice, preferred == Preferences.ReadBack.NONE || voice.isPresent() ? Optional.empty()
				: Optional.of(new Tones()));
	}

	/** Whether anything is read back. */
	boolean hear() {
		return voice.isPresent() || tones.isPresent();
	}

	@Override
	public void accept(Told told) {
		voice.ifPresent(speaker -> speaker.say(told.words()));
		tones.ifPresent(player -> player.play(told.tone()));
	}

	void close() {
		voice.ifPresent(SystemVoice::hush);
		tones.ifPresent(Tones::close);
	}
}

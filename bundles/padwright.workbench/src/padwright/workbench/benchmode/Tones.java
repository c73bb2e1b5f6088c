package padwright.workbench.benchmode;

import org.eclipse.swt.widgets.Display;

import padwright.views.bench.Told.Tone;
import padwright.workbench.tones.PlainTone;
import padwright.workbench.tones.Speaker;

/** Short tones, one after the other; where no sound can be played, the beep of the display for what is wrong. */
final class Tones {

	private static final int MILLISECONDS = 90;

	private final Speaker speaker = new Speaker();

	void play(Tone tone) {
		speaker.play(PlainTone.wave(hertz(tone), MILLISECONDS), silent -> silent.ifPresent(why -> beep(tone)));
	}

	private static void beep(Tone tone) {
		Display display = Display.getDefault();
		if (tone == Tone.WRONG && !display.isDisposed()) {
			display.asyncExec(display::beep);
		}
	}

	/** Deep for a drag, high for what slides, a fifth apart; deeper still for what is wrong. */
	static double hertz(Tone tone) {
		return switch (tone) {
		case DRAGS -> 440;
		case SLIDES -> 660;
		case DONE -> 880;
		case WRONG -> 165;
		};
	}

	void close() {
		speaker.close();
	}
}

package padwright.workbench.benchmode;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

import org.eclipse.swt.widgets.Display;

import padwright.views.bench.Told.Tone;

/** Short tones, one after the other; where no sound can be played, the beep of the display for what is wrong. */
final class Tones {

	private static final float RATE = 22_050;
	private static final int MILLISECONDS = 90;
	private static final double LOUDNESS = 0.3;
	/** Rises and falls, so that it does not click. */
	private static final double EDGE = 0.15;

	private final ExecutorService player = Executors.newSingleThreadExecutor(work -> {
		Thread thread = new Thread(work, "tones");
		thread.setDaemon(true);
		return thread;
	});

	void play(Tone tone) {
		player.execute(() -> sound(tone));
	}

	private static void sound(Tone tone) {
		AudioFormat format = new AudioFormat(RATE, 8, 1, true, false);
		try (SourceDataLine line = AudioSystem.getSourceDataLine(format)) {
			line.open(format);
			line.start();
			byte[] wave = wave(hertz(tone));
			line.write(wave, 0, wave.length);
			line.drain();
		} catch (LineUnavailableException | IllegalArgumentException | LinkageError silent) {
			beep(tone);
		}
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

	static byte[] wave(double hertz) {
		byte[] wave = new byte[(int) (RATE * MILLISECONDS / 1000)];
		for (int index = 0; index < wave.length; index++) {
			double through = index / (double) wave.length;
			double edge = Math.min(1, Math.min(through, 1 - through) / EDGE);
			wave[index] = (byte) (Byte.MAX_VALUE * LOUDNESS * edge * Math.sin(2 * Math.PI * hertz * index / RATE));
		}
		return wave;
	}

	void close() {
		player.shutdown();
	}
}

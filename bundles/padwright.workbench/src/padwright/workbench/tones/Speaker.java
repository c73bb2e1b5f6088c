package padwright.workbench.tones;

import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.function.Consumer;

import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

import padwright.workbench.Messages;

/** The loudspeaker of the machine: one sound after the other, in a thread of its own. */
public final class Speaker {

	private static final AudioFormat FORMAT =
			new AudioFormat(PlainTone.RATE, PlainTone.BYTES * Byte.SIZE, 1, true, false);

	private final ExecutorService player = Executors.newSingleThreadExecutor(work -> {
		Thread thread = new Thread(work, "tones");
		thread.setDaemon(true);
		return thread;
	});

	/** Tries, without a sound. {@code told} gets in its thread why none can be heard, in words, or nothing if it can. */
	public void ask(Consumer<Optional<String>> told) {
		play(new byte[0], told);
	}

	/** Plays a wave of {@link PlainTone}. {@code told} gets in its thread why it was not heard, or nothing if it was. */
	public void play(byte[] wave, Consumer<Optional<String>> told) {
		try {
			player.execute(() -> told.accept(sound(wave)));
		} catch (RejectedExecutionException closed) {
			// Nobody is there any more who would hear it.
		}
	}

	private static Optional<String> sound(byte[] wave) {
		try (SourceDataLine line = AudioSystem.getSourceDataLine(FORMAT)) {
			line.open(FORMAT);
			line.start();
			line.write(wave, 0, wave.length);
			line.drain();
			return Optional.empty();
		} catch (LineUnavailableException | IllegalArgumentException | LinkageError silent) {
			return Optional.of(Messages.get("tones.silent"));
		}
	}

	public void close() {
		player.shutdown();
	}
}

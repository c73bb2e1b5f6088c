package padwright.language.files;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whichever step of saving fails, and however much was written by then, no content is lost or torn. */
class FailingDiskTest {

	private static final byte[] OLDER = "older\n".getBytes(StandardCharsets.UTF_8);
	private static final byte[] OLD = "old\n".repeat(100).getBytes(StandardCharsets.UTF_8);
	private static final byte[] NEW = "new!\n".repeat(200).getBytes(StandardCharsets.UTF_8);
	/** More than an exchange has. */
	private static final int MOST_STEPS = 30;

	@TempDir
	private Path folder;
	private Path file;
	private Path backup;

	@BeforeEach
	void writeTheOld() throws IOException {
		file = Files.write(folder.resolve("spring.plan"), OLD);
		backup = Files.write(folder.resolve("spring.plan.bak"), OLDER);
	}

	/** The process is gone, so that nothing tidies up behind it. */
	private static final class Killed extends Error {

		private static final long serialVersionUID = 1;
	}

	/** Does as many steps as it is told, and the one behind them halfway. */
	private static class BadDisk extends Disk {

		private int left;

		BadDisk(int steps) {
			left = steps;
		}

		/** What a step does when there is no more. */
		void fail() throws IOException {
			throw new IOException("no space left on the disk");
		}

		final void step() throws IOException {
			if (left-- <= 0) {
				fail();
			}
		}

		@Override
		Path createBeside(Path target) throws IOException {
			step();
			return super.createBeside(target);
		}

		@Override
		void write(Path aside, byte[] content) throws IOException {
			for (int part = 1; part <= 4; part++) {
				Files.write(aside, Arrays.copyOf(content, content.length * part / 4));
				step();
			}
			super.write(aside, content);
		}

		@Override
		void permitLike(Path model, Path aside) throws IOException {
			step();
			super.permitLike(model, aside);
		}

		@Override
		void move(Path aside, Path target) throws IOException {
			step();
			super.move(aside, target);
		}
	}

	/** Not even tidying is done by a process that is gone. */
	private static final class KilledDisk extends BadDisk {

		private boolean killed;

		KilledDisk(int steps) {
			super(steps);
		}

		@Override
		void fail() {
			killed = true;
			throw new Killed();
		}

		@Override
		void tidy(Path aside) throws IOException {
			if (!killed) {
				super.tidy(aside);
			}
		}
	}

	private void assertNothingLost(int steps) throws IOException {
		byte[] held = Files.readAllBytes(file);
		byte[] kept = Files.readAllBytes(backup);
		assertTrue(Arrays.equals(held, OLD) || Arrays.equals(held, NEW), "torn after " + steps + " steps");
		assertTrue(Arrays.equals(kept, OLDER) || Arrays.equals(kept, OLD), "backup torn after " + steps + " steps");
		assertTrue(Arrays.equals(held, OLD) || Arrays.equals(kept, OLD), "lost after " + steps + " steps");
	}

	@Test
	void aFullDiskLeavesTheOldAndNothingBehind() throws IOException {
		int steps = 0;
		while (fails(steps)) {
			assertNothingLost(steps);
			assertArrayEquals(OLD, Files.readAllBytes(file));
			try (Stream<Path> files = Files.list(folder)) {
				assertEquals(2, files.count(), "left behind after " + steps + " steps");
			}
			steps++;
		}
		assertTrue(steps > 10 && steps < MOST_STEPS, steps + " steps");
		assertArrayEquals(NEW, Files.readAllBytes(file));
	}

	private boolean fails(int steps) {
		try {
			new SafeFile(new BadDisk(steps)).exchange(file, OLD, NEW);
			return false;
		} catch (IOException full) {
			return true;
		}
	}

	@Test
	void aKilledProcessLeavesTheOldOrTheNewInFull() throws IOException {
		for (int steps = 0; steps < MOST_STEPS; steps++) {
			writeTheOld();
			try {
				new SafeFile(new KilledDisk(steps)).exchange(file, OLD, NEW);
				assertTrue(steps > 10);
			} catch (Killed gone) {
				assertTrue(steps < MOST_STEPS - 1, "never gets to the end");
			}
			assertNothingLost(steps);
		}
	}

	/** Somebody else saves while the backup is written. */
	@Test
	void whatSomebodyElseSavedMeanwhileIsKept() throws IOException {
		byte[] others = "others\n".getBytes(StandardCharsets.UTF_8);
		Disk slow = new Disk() {
			@Override
			void write(Path aside, byte[] content) throws IOException {
				super.write(aside, content);
				Files.write(file, others);
			}
		};
		assertThrows(IOException.class, () -> new SafeFile(slow).exchange(file, OLD, NEW));
		assertArrayEquals(others, Files.readAllBytes(file));
	}
}

package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is done to a file, the command line answers in its own words. */
class MutilatedFilesTest {

	private static final int COPIES = 210;

	@TempDir
	private Path folder;

	private interface Mutilation {
		byte[] of(byte[] original, Random random);
	}

	private static final List<Mutilation> MUTILATIONS = List.of(MutilatedFilesTest::truncated,
			MutilatedFilesTest::shuffled, MutilatedFilesTest::spoilt, MutilatedFilesTest::huge,
			(original, random) -> new byte[0], MutilatedFilesTest::latin1, MutilatedFilesTest::nested);

	@Test
	void everyCopyIsAnsweredWithAnExitStatus() throws IOException {
		List<Path> examples = documents();
		Random random = new Random(1);
		for (int copy = 0; copy < COPIES; copy++) {
			Path example = examples.get(copy % examples.size());
			Mutilation mutilation = MUTILATIONS.get(copy / examples.size() % MUTILATIONS.size());
			byte[] original = Files.readAllBytes(example);
			Files.write(example, mutilation.of(original, random));
			CommandRun run = CommandRun.padwright("check", example);
			assertTrue(run.status() >= ExitStatus.CLEAN && run.status() <= ExitStatus.UNUSABLE, "copy " + copy);
			assertFalse(run.showsItsInside(), "copy " + copy + ": " + run.err() + run.out());
			Files.write(example, original);
		}
	}

	private List<Path> documents() throws IOException {
		ExampleShop.copiedTo(folder);
		return ExampleShop.files(folder).stream().filter(file -> !file.endsWith("padwright.shop")).toList();
	}

	private static byte[] truncated(byte[] original, Random random) {
		return Arrays.copyOf(original, random.nextInt(original.length));
	}

	private static byte[] shuffled(byte[] original, Random random) {
		List<String> words = new ArrayList<>(List.of(text(original).split(" ")));
		Collections.shuffle(words, random);
		return String.join(" ", words).getBytes(StandardCharsets.UTF_8);
	}

	private static byte[] spoilt(byte[] original, Random random) {
		byte[] spoilt = original.clone();
		for (int hit = 0; hit < 20; hit++) {
			spoilt[random.nextInt(spoilt.length)] = (byte) random.nextInt(256);
		}
		return spoilt;
	}

	private static byte[] huge(byte[] original, Random random) {
		return text(original).repeat(1 + random.nextInt(40)).getBytes(StandardCharsets.UTF_8);
	}

	private static byte[] latin1(byte[] original, Random random) {
		return (text(original) + "// größer").getBytes(StandardCharsets.ISO_8859_1);
	}

	private static byte[] nested(byte[] original, Random random) {
		String depth = "(".repeat(1 + random.nextInt(20_000));
		return ("stock S { rule \"deep\" warn when " + depth + "pad is x").getBytes(StandardCharsets.UTF_8);
	}

	private static String text(byte[] bytes) {
		return new String(bytes, StandardCharsets.UTF_8);
	}
}

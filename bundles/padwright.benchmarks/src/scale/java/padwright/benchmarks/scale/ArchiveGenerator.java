package padwright.benchmarks.scale;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Writes the archive of an invented shop: services of many years, a plan each. The same for the same number of plans.
 * A usual plan is some 40 lines; one in twenty has a mistake.
 */
final class ArchiveGenerator {

	static final int BASES = 12;
	static final int VARIANTS = 48;
	static final int STOCKS = 5;

	private static final List<String> KEYS = List.of("Tr2", "Tr1", "Cs", "B", "As", "A", "G2", "G", "Gs", "Fs",
			"F", "E", "D", "Ds", "LowCs", "LowC");
	private static final String[] FOUND = { "sound", "worn", "torn", "swollen" };
	private static final String[] FELT = { ".", ".", ".", "0.5", "0.5", "1", "1.5", "2" };
	private static final String[] COUPLINGS = { "F > Fs", "E > Fs", "D > Fs", "A > As", "F > As" };

	private final Path example;
	private final Path archive;

	/**
	 * @param example the shop whose system and stock are taken over
	 * @param archive a folder that is not there yet
	 */
	ArchiveGenerator(Path example, Path archive) {
		this.example = example;
		this.archive = archive;
	}

	/** Writes systems, stocks and plans; gives the number of lines. */
	long write(int plans) throws IOException {
		write("padwright.shop", "");
		String system = Files.readString(example.resolve("systems/boehm.keys"));
		String stock = Files.readString(example.resolve("stock/bench.stock"));
		long lines = 0;
		for (int number = 0; number < BASES; number++) {
			lines += write("systems/base" + number + ".keys", system.replace("BoehmC", "Base" + number));
		}
		for (int number = 0; number < VARIANTS; number++) {
			lines += write("systems/variant" + number + ".keys", variant(number));
		}
		for (int number = 0; number < STOCKS; number++) {
			lines += write("stock/stock" + number + ".stock", stock.replace("stock Bench", "stock Bench" + number));
		}
		for (int number = 0; number < plans; number++) {
			lines += write(name(number), plan(number));
		}
		return lines;
	}

	static String name(int plan) {
		return "plans/%02d/plan%05d.plan".formatted(plan / 100, plan);
	}

	private static String variant(int number) {
		return "unit mm\n\n// What differs on an instrument of this make.\nsystem Variant" + number + " based on Base"
				+ number % BASES + " {\n\tchange Fs cup 17.5 deep 2.9" + number % 7 + "\n\tchange LowC at 9" + number % 9
				+ "\n}\n";
	}

	private static String plan(int number) {
		SplittableRandom random = new SplittableRandom(number);
		String system = random.nextInt(3) == 0 ? "Variant" + random.nextInt(VARIANTS) : "Base" + random.nextInt(BASES);
		StringBuilder text = new StringBuilder("// Service " + number + " of an invented shop.\n\nplan Service" + number
				+ " \"Service of a flute\" for " + system + " serial \"S-" + random.nextInt(3000) + "\" with Bench"
				+ random.nextInt(STOCKS) + " {\n\tdate 20" + (10 + random.nextInt(15)) + "-0" + (1 + random.nextInt(9))
				+ "-1" + random.nextInt(10) + "\n\tseat within 0.5 thou\n\tbed 13..17 thou\n\tplayer \"P-"
				+ random.nextInt(900) + "\" { tone bright saliva mild home 22 °C 55 %RH }\n"
				+ "\tfit Rigid on Disc20 with Clear glue Shellac\n\tread at 12 3 6 9\n");
		KEYS.forEach(key -> row(key, random, text));
		for (String coupling : COUPLINGS) {
			text.append("\tregulate ").append(coupling).append(" : 0.5 thou light at ")
					.append(random.nextBoolean() ? "driver" : "driven").append('\n');
		}
		return text.append("}\n").toString();
	}

	private static void row(String key, SplittableRandom random, StringBuilder text) {
		boolean mistake = random.nextInt(20 * KEYS.size()) == 0;
		text.append("\tkey ").append(mistake ? key + "x" : key).append(" found ")
				.append(FOUND[random.nextInt(FOUND.length)]).append(" empty 15 15 ")
				.append(random.nextBoolean() ? "15" : "15.5").append(" 15 stack 7.5 7.5 felt");
		felt(random, text);
		if (random.nextInt(3) == 0) {
			text.append(" shim 0.5 from 2 to ").append(4 + random.nextInt(4)).append("\n\t\tfelt");
			felt(random, text);
		}
		text.append(" shim none\n");
	}

	private static void felt(SplittableRandom random, StringBuilder text) {
		for (int reading = 0; reading < 4; reading++) {
			text.append(' ').append(FELT[random.nextInt(FELT.length)]);
		}
	}

	private long write(String name, String text) throws IOException {
		Path file = archive.resolve(name);
		Files.createDirectories(file.getParent());
		Files.writeString(file, text);
		return text.lines().count();
	}
}

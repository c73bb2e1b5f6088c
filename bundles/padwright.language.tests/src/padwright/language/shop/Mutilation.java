package padwright.language.shop;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Ways in which a file can be spoilt; each gives the same for the same random numbers. */
enum Mutilation {
	TRUNCATED {
		@Override
		byte[] of(String text, Random random) {
			byte[] bytes = utf8(text);
			return Arrays.copyOf(bytes, random.nextInt(bytes.length));
		}
	},
	LINES_SHUFFLED {
		@Override
		byte[] of(String text, Random random) {
			List<String> lines = new ArrayList<>(text.lines().toList());
			Collections.shuffle(lines, random);
			return utf8(String.join("\n", lines));
		}
	},
	WORDS_SHUFFLED {
		@Override
		byte[] of(String text, Random random) {
			List<String> words = new ArrayList<>(List.of(text.split("(?<=\\s)")));
			Collections.shuffle(words, random);
			return utf8(String.join("", words));
		}
	},
	WORDS_DROPPED {
		@Override
		byte[] of(String text, Random random) {
			List<String> words = new ArrayList<>(List.of(text.split("(?<=\\s)")));
			words.removeIf(word -> random.nextInt(20) == 0);
			return utf8(String.join("", words));
		}
	},
	WORDS_DOUBLED {
		@Override
		byte[] of(String text, Random random) {
			StringBuilder doubled = new StringBuilder();
			for (String word : text.split("(?<=\\s)")) {
				doubled.append(random.nextInt(20) == 0 ? word + " " + word : word);
			}
			return utf8(doubled.toString());
		}
	},
	CHARACTERS_CHANGED {
		@Override
		byte[] of(String text, Random random) {
			StringBuilder changed = new StringBuilder(text);
			for (int count = 0; count < 10; count++) {
				changed.setCharAt(random.nextInt(text.length()), (char) (1 + random.nextInt(0x2FFF)));
			}
			return utf8(changed.toString());
		}
	},
	FIGURES_CHANGED {
		@Override
		byte[] of(String text, Random random) {
			String[] figures = { "0", "-1", "99999999999999", "0.00000001", "1".repeat(2000), "13..16", "1e9", "." };
			StringBuilder changed = new StringBuilder();
			for (String word : text.split("(?<=\\s)")) {
				boolean change = word.matches("[0-9.]+\\s") && random.nextInt(10) == 0;
				changed.append(change ? figures[random.nextInt(figures.length)] + " " : word);
			}
			return utf8(changed.toString());
		}
	},
	BINARY_SPLICED {
		@Override
		byte[] of(String text, Random random) {
			byte[] bytes = utf8(text);
			byte[] noise = new byte[64];
			random.nextBytes(noise);
			System.arraycopy(noise, 0, bytes, random.nextInt(bytes.length - noise.length), noise.length);
			return bytes;
		}
	},
	EMPTIED(1) {
		@Override
		byte[] of(String text, Random random) {
			return utf8(random.nextBoolean() ? "" : " \n\t\r\n");
		}
	},
	REPEATED(1) {
		@Override
		byte[] of(String text, Random random) {
			return utf8(text.repeat(50));
		}
	},
	LATIN_1(1) {
		@Override
		byte[] of(String text, Random random) {
			return (text + "// für").getBytes(StandardCharsets.ISO_8859_1);
		}
	},
	UTF_16(1) {
		@Override
		byte[] of(String text, Random random) {
			return text.getBytes(StandardCharsets.UTF_16);
		}
	},
	BYTE_ORDER_MARK(1) {
		@Override
		byte[] of(String text, Random random) {
			return utf8("\uFEFF" + text);
		}
	},
	CARRIAGE_RETURNS {
		@Override
		byte[] of(String text, Random random) {
			return utf8(text.replace("\n", random.nextBoolean() ? "\r\n" : "\r"));
		}
	},
	DEEPLY_NESTED {
		@Override
		byte[] of(String text, Random random) {
			String deep = (random.nextBoolean() ? "(" : "not ").repeat(10_000);
			String rule = "\nrule \"deep\" warn when " + deep + "key is A";
			return utf8(insertedAtALine(text, rule, random));
		}
	},
	LONG_LINE {
		@Override
		byte[] of(String text, Random random) {
			String[] words = { " or key is A", "x", " 1", "\"", ".", ",", " shim", "(", "}", "{" };
			return utf8(insertedAtALine(text, words[random.nextInt(words.length)].repeat(20_000), random));
		}
	};

	/** How many different copies are worth a look. */
	private final int copies;

	Mutilation() {
		this(2);
	}

	Mutilation(int copies) {
		this.copies = copies;
	}

	int copies() {
		return copies;
	}

	/** A spoilt copy of {@code text}. */
	abstract byte[] of(String text, Random random);

	private static byte[] utf8(String text) {
		return text.getBytes(StandardCharsets.UTF_8);
	}

	private static String insertedAtALine(String text, String inserted, Random random) {
		int line = text.indexOf('\n', random.nextInt(text.length()));
		int at = line < 0 ? text.length() : line;
		return text.substring(0, at) + inserted + text.substring(at);
	}
}

package padwright.commands;

import java.io.DataInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The git of the user, asked in a folder: so its settings, hooks and kinds of repository count as they do for the user. */
record Git(Path folder) {

	/** Of a file as it was and is: git's name of the text, and its letter for what happened. */
	record Change(Path path, char kind, String before, String after) {
	}

	private static final String SUBMODULE = "160000";

	/** The top of the working tree around the folder. */
	Path top() {
		return Path.of(answer("rev-parse", "--show-toplevel").strip());
	}

	/** How files differ from what is staged, or with {@code --cached} what is staged from what was committed last. */
	List<Change> changes(String... more) {
		List<String> command = new ArrayList<>(List.of("diff", "--raw", "--no-abbrev", "--no-renames", "-z"));
		command.addAll(List.of(more));
		String[] words = answer(command.toArray(String[]::new)).split("\0");
		List<Change> changes = new ArrayList<>();
		for (int index = 0; index + 1 < words.length; index += 2) {
			String[] parts = words[index].split(" ");
			if (!parts[0].endsWith(SUBMODULE) && !parts[1].equals(SUBMODULE)) {
				changes.add(new Change(folder.resolve(words[index + 1]), parts[4].charAt(0), parts[2], parts[3]));
			}
		}
		return changes;
	}

	/** The texts that git knows by these names, from one process for all of them. */
	Map<String, String> texts(Set<String> names) {
		Map<String, String> texts = new LinkedHashMap<>();
		if (names.isEmpty()) {
			return texts;
		}
		try {
			Process git = start("cat-file", "--batch");
			try (OutputStream questions = git.getOutputStream();
					DataInputStream answers = new DataInputStream(git.getInputStream())) {
				for (String name : names) {
					questions.write((name + "\n").getBytes(StandardCharsets.UTF_8));
					questions.flush();
					texts.put(name, text(answers));
				}
			}
			return texts;
		} catch (IOException silent) {
			throw new InputException("git does not tell what is staged here; try git fsck");
		}
	}

	private static String text(DataInputStream answers) throws IOException {
		StringBuilder head = new StringBuilder();
		for (int letter = answers.readUnsignedByte(); letter != '\n'; letter = answers.readUnsignedByte()) {
			head.append((char) letter);
		}
		String[] parts = head.toString().split(" ");
		if (parts.length != 3) {
			throw new IOException(head.toString());
		}
		byte[] text = new byte[Integer.parseInt(parts[2])];
		answers.readFully(text);
		answers.readByte();
		return new String(text, StandardCharsets.UTF_8);
	}

	private String answer(String... command) {
		try {
			Process git = start(command);
			String answer = new String(git.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
			if (git.waitFor() == 0) {
				return answer;
			}
		} catch (IOException noGit) {
			throw new InputException("git cannot be run, and --staged asks it what is staged; install git");
		} catch (InterruptedException stopped) {
			Thread.currentThread().interrupt();
		}
		throw new InputException("git does not know what is staged here; use --staged inside a working tree of git");
	}

	private Process start(String... command) throws IOException {
		List<String> words = new ArrayList<>(List.of("git"));
		words.addAll(List.of(command));
		return new ProcessBuilder(words).directory(folder.toAbsolutePath().toFile())
				.redirectError(ProcessBuilder.Redirect.DISCARD).start();
	}
}

package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.IGrammarAccess;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import padwright.commands.GuidePages.Example;

/** What the guide shows is so: its examples are read, its commands run. */
class GuideExamplesTest {

	private static final String SHELL = "$ padwright ";
	private static final Pattern WORD = Pattern.compile("[\\p{L}_][\\p{L}\\p{N}_/%]*|%RH|%/%RH|°C");

	@TempDir
	private Path folder;

	static List<Example> ofLanguage() {
		return GuidePages.examples().stream().filter(Example::isOfLanguage).toList();
	}

	static List<Path> pages() {
		return GuidePages.all();
	}

	@ParameterizedTest
	@MethodSource("ofLanguage")
	void examplesOfTheLanguageHaveTheFindingsTheyShow(Example example) throws IOException {
		ExampleShop.copiedTo(folder);
		String name = example.file().orElse(example.kind().equals("system") ? "example.keys"
				: example.kind().equals("stock") ? "example.stock" : "example.plan");
		Path file = CommandRun.write(folder, name, document(example));
		CommandRun run = CommandRun.padwright("check", file, "--json");
		List<String> codes = StreamSupport.stream(run.json().getAsJsonArray("findings").spliterator(), false)
				.map(finding -> finding.getAsJsonObject())
				.filter(finding -> !finding.get("severity").getAsString().equals("info"))
				.map(finding -> finding.get("code").getAsString()).toList();
		assertEquals(example.codes(), codes, run.out());
	}

	private static String document(Example example) {
		return switch (example.kind()) {
		case "system" -> "system Example {\n" + example.text() + "\n}\n";
		case "stock" -> "stock Example {\n" + example.text() + "\n}\n";
		case "row" -> "plan Example for BoehmC with Bench {\nfit Rigid on Disc20 with Clear glue Shellac\n"
				+ "read at 12 3 6 9\n" + example.text() + "\n}\n";
		default -> example.text() + "\n";
		};
	}

	/** So that no clause is left without one. */
	@Test
	void everyWordOfTheLanguageIsInAnExample() {
		Set<String> unseen = new TreeSet<>(GrammarUtil.getAllKeywords(
				Language.services().getInstance(IGrammarAccess.class).getGrammar()));
		unseen.removeIf(word -> !Character.isLetter(word.codePointAt(0)));
		String all = ofLanguage().stream().map(Example::text).collect(Collectors.joining("\n"));
		WORD.matcher(all).results().forEach(word -> unseen.remove(word.group()));
		assertEquals(Set.of(), unseen);
	}

	/** Each page's commands run one after another in a copy of the example shop, with the files that the page shows. */
	@ParameterizedTest
	@MethodSource("pages")
	void commandsDoWhatTheGuideShows(Path page) throws IOException {
		ExampleShop.copiedTo(folder);
		for (Example example : GuidePages.examples(page)) {
			if (example.kind().equals("file")) {
				CommandRun.write(folder, example.file().orElseThrow(), example.text());
			} else if (example.kind().equals("shell")) {
				run(example);
			}
		}
	}

	private void run(Example example) {
		CommandRun run = new CommandRun(ExitStatus.CLEAN, "", "");
		for (String line : example.text().lines().toList()) {
			if (line.startsWith(SHELL)) {
				run = CommandRun.padwright(arguments(line.substring(SHELL.length())));
				assertEquals(ExitStatus.CLEAN, run.status(), line + "\n" + run.err());
			} else {
				assertTrue((run.out() + run.err()).lines().toList().contains(line), line + "\nis not in\n" + run.out());
			}
		}
	}

	/** Files are those of the copied shop. */
	private Object[] arguments(String line) {
		List<Object> arguments = new ArrayList<>();
		for (String word : line.split(" ")) {
			boolean isFile = word.contains("/") || word.contains(".") || word.equals("out");
			arguments.add(isFile && !word.startsWith("-") ? folder.resolve(word) : word);
		}
		return arguments.toArray();
	}
}

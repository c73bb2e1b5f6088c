package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

import picocli.CommandLine;

/** The page of commands has all commands with all their options, and no others. */
class GuideCommandsTest {

	private static final Set<String> OF_EVERY_COMMAND = Set.of("--help", "--version");
	private static final Pattern SECTION = Pattern.compile("<h2 id=\"(\\w+)\">padwright \\1\\b.*?(?=<h2|</body>)",
			Pattern.DOTALL);
	private static final Pattern OPTION_IN_TABLE = Pattern.compile("<td><code>(--[a-z]+)</code></td>");
	private static final Pattern COMMAND = Pattern.compile("padwright ([a-z]+)((?: [^ <\\n]+)*)");

	private static final Map<String, CommandLine> COMMANDS = Padwright.commandLine().getSubcommands();

	@Test
	void thePageOfCommandsIsComplete() {
		Map<String, Set<String>> told = new TreeMap<>();
		SECTION.matcher(GuidePages.text(GuidePages.FOLDER.resolve("commands.html"))).results()
				.forEach(section -> told.put(section.group(1), options(section)));
		Map<String, Set<String>> known = new TreeMap<>();
		COMMANDS.forEach((name, command) -> known.put(name, command.getCommandSpec().options().stream()
				.filter(option -> !option.inherited()).map(option -> option.longestName())
				.filter(option -> !OF_EVERY_COMMAND.contains(option))
				.collect(Collectors.toCollection(TreeSet::new))));
		assertEquals(known, told);
	}

	/** Told once, before all of them. */
	@Test
	void languageAndUnitAreToldForAll() {
		String page = GuidePages.text(GuidePages.FOLDER.resolve("commands.html"));
		String before = page.substring(0, page.indexOf("<h2"));
		assertTrue(before.contains("<code>--language</code>") && before.contains("<code>--unit</code>"));
	}

	private static Set<String> options(MatchResult section) {
		return OPTION_IN_TABLE.matcher(section.group()).results().map(option -> option.group(1))
				.collect(Collectors.toCollection(TreeSet::new));
	}

	/** Wherever the guide names one in code; a version control's own settings are not commands of ours. */
	@Test
	void everyCommandAndOptionThatIsNamedExists() {
		List<String> unknown = GuidePages.all().stream().map(GuidePages::text)
				.map(text -> text.replaceAll("(?s)<pre class=\"config\">.*?</pre>", ""))
				.flatMap(text -> COMMAND.matcher(text).results())
				.filter(command -> !exists(command.group(1), command.group(2))).map(MatchResult::group).toList();
		assertEquals(List.of(), unknown);
	}

	private static boolean exists(String name, String arguments) {
		return COMMANDS.containsKey(name) && Arrays.stream(arguments.split(" ")).filter(word -> word.startsWith("-"))
				.allMatch(option -> COMMANDS.get(name).getCommandSpec().findOption(option) != null);
	}
}

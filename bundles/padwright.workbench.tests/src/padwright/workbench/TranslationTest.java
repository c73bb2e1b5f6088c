package padwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.List;
import java.util.Properties;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.text.IDocument;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.texteditor.AbstractTextEditor;
import org.eclipse.ui.views.contentoutline.ContentOutline;
import org.junit.jupiter.api.Test;

/** All words of the workbench are there in both languages. */
class TranslationTest {

	private static final Pattern KEY = Pattern.compile("\"%([A-Za-z.]+)\"");

	/** Words of our own as UTF-8, those of the platform in the encoding that it reads them in. */
	private static Properties words(String path) throws IOException {
		Properties words = new Properties();
		try (InputStream in = Messages.class.getClassLoader().getResourceAsStream(path)) {
			words.load(new InputStreamReader(in,
					path.startsWith("plugin") ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8));
		}
		return words;
	}

	@Test
	void messagesAreThereInGermanToo() throws Exception {
		assertSameKeys("padwright/workbench/messages");
	}

	@Test
	void namesOfCommandsAndViewsAreThereInGermanToo() throws Exception {
		assertSameKeys("plugin");
	}

	/** Fragments of ours lend them to the platform. */
	@Test
	void wordsOfThePlatformAreThereInGermanToo() throws Exception {
		assertGerman(JFaceResources.class, "org/eclipse/jface/messages", "cancel", "Abbrechen");
		assertGerman(PlatformUI.class, "org/eclipse/ui/internal/messages", "Operations_undoCommand", "&Rückgängig {0}");
		assertGerman(PlatformUI.class, "org/eclipse/ui/internal/progress/messages", "ProgressView_NoOperations",
				"Nichts ist in Arbeit.");
		assertGerman(IDocument.class, "org/eclipse/text/undo/UndoMessages", "DocumentUndoManager.operationLabel", "Tippen");
		assertGerman(AbstractTextEditor.class, "org/eclipse/ui/internal/findandreplace/FindReplaceMessages",
				"FindReplace_Dialog_Title", "Suchen und ersetzen");
		assertGerman(ContentOutline.class, "org/eclipse/ui/internal/views/contentoutline/messages",
				"ContentOutline_noOutline", "Kein Text mit einer Gliederung ist offen.");
	}

	/** None is translated that the platform does not have, and each has as many arguments. */
	private static void assertGerman(Class<?> beside, String name, String key, String words) throws IOException {
		Properties english = platformWords(beside, name + ".properties");
		Properties german = platformWords(beside, name + "_de.properties");
		assertEquals(words, german.getProperty(key));
		for (String translated : german.stringPropertyNames()) {
			assertTrue(english.containsKey(translated), translated);
			assertEquals(arguments(english, translated), arguments(german, translated), translated);
		}
	}

	private static Properties platformWords(Class<?> beside, String path) throws IOException {
		Properties words = new Properties();
		try (InputStream in = beside.getClassLoader().getResourceAsStream(path)) {
			words.load(in);
		}
		return words;
	}

	private static void assertSameKeys(String name) throws IOException {
		Properties english = words(name + ".properties");
		Properties german = words(name + "_de.properties");
		assertEquals(new TreeSet<>(english.stringPropertyNames()), new TreeSet<>(german.stringPropertyNames()));
		for (String key : english.stringPropertyNames()) {
			assertEquals(arguments(english, key), arguments(german, key), key);
			assertFalse(german.getProperty(key).contains("\uFFFD"), key);
		}
	}

	private static int arguments(Properties words, String key) {
		return new MessageFormat(words.getProperty(key)).getFormatsByArgumentIndex().length;
	}

	@Test
	void namesOfTheExtensionsExist() throws Exception {
		String extensions;
		try (InputStream in = Messages.class.getClassLoader().getResourceAsStream("plugin.xml")) {
			extensions = new String(in.readAllBytes(), StandardCharsets.UTF_8);
		}
		List<String> keys = KEY.matcher(extensions).results().map((MatchResult found) -> found.group(1)).toList();
		assertFalse(keys.isEmpty());
		Properties english = words("plugin.properties");
		assertTrue(english.stringPropertyNames().containsAll(keys), () -> keys.toString());
	}
}

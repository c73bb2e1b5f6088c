package padwright.language.ide.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.InitializeParams;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An editor is told everything in the language of its user. */
class LanguageOfTheClientTest {

	private static final String PLAN = "plan Work for Mini { }";

	@TempDir
	private Path folder;
	private final Locale before = Locale.getDefault(Locale.Category.DISPLAY);
	private Path plan;

	@BeforeEach
	void writeShop() throws Exception {
		plan = TestShop.empty(folder.resolve("shop")).write("work.plan", PLAN);
		Locale.setDefault(Locale.Category.DISPLAY, Locale.ENGLISH);
	}

	@AfterEach
	void putLanguageBack() {
		Locale.setDefault(Locale.Category.DISPLAY, before);
	}

	@Test
	void germanEditorIsToldInGerman() throws Exception {
		assertTold("Klappensystem Mini gibt es nicht:", "de");
	}

	@Test
	void countryMayBeSaidEitherWay() throws Exception {
		assertTold("Klappensystem Mini gibt es nicht:", "de_CH");
		assertTold("Klappensystem Mini gibt es nicht:", "de-AT");
	}

	@Test
	void allOthersAreToldInEnglish() throws Exception {
		assertTold("There is no key system called Mini:", "fr");
		assertTold("There is no key system called Mini:", "no language at all");
		assertTold("There is no key system called Mini:", null);
	}

	private void assertTold(String words, String language) throws Exception {
		try (Connection editor = Connection.speaking(language, plan.getParent())) {
			List<Diagnostic> told = editor.client().diagnostics(Connection.uri(plan), found -> !found.isEmpty());
			assertTrue(told.get(0).getMessage().getLeft().startsWith(words), told.toString());
		}
	}

	@Test
	void serverInTheProgramOfItsClientLeavesTheLanguageAlone() {
		InitializeParams params = new InitializeParams();
		params.setLocale("de");
		try (LocalServer server = LocalServer.start(params, new TestClient())) {
			assertEquals(Locale.ENGLISH, Locale.getDefault(Locale.Category.DISPLAY));
		}
	}
}

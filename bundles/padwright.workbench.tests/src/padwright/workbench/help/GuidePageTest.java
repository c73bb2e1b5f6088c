package padwright.workbench.help;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.ResourceBundle.Control;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

import padwright.workbench.Driver;
import padwright.workbench.Messages;

/** The guide can be read in the window without a browser. */
class GuidePageTest {

	private static final Path GUIDE = Path.of("../padwright.guide/guide");

	@TempDir
	private Path folder;

	static List<Path> pages() throws IOException {
		try (Stream<Path> files = Files.walk(GUIDE)) {
			return files.filter(file -> file.toString().endsWith(".html")).sorted().toList();
		}
	}

	@ParameterizedTest
	@MethodSource("pages")
	void everyPageIsTextWithoutMarks(Path file) throws IOException {
		String html = Files.readString(file);
		GuidePage page = GuidePage.of(html);
		assertTrue(page.title().endsWith("Padwright"), page.title());
		assertFalse(page.text().matches("(?s).*(</|&[a-z]+;).*"), page.text());
		assertEquals(html.split("<h2").length - 1, page.spans().stream()
				.filter(span -> span.look() == GuidePage.Look.HEADING).count() - (html.split("<h3").length - 1));
		for (GuidePage.Span span : page.spans()) {
			assertTrue(span.start() + span.length() <= page.text().length() && span.length() >= 0, span.toString());
		}
	}

	@Test
	void tablesListsAndCodeKeepTheirForm() {
		GuidePage page = GuidePage.of("<body><nav><ul><li>no</li></ul></nav><main><h2 id=\"row\">A row</h2>"
				+ "<p>One  two\nthree <code>a &lt; b</code></p><pre>key F\n  felt</pre><table><tr><td>fit</td><td>pad</td>"
				+ "</tr></table><ul><li>x</li></ul></main><footer>no</footer></body>");
		assertEquals("A row\n\nOne two three a < b\n\nkey F\n  felt\n\nfit\tpad\n\n\u2022 x\n", page.text());
		assertEquals(0, page.heading("row").orElseThrow());
	}

	/** The window shows the guide in its own language. */
	@ParameterizedTest
	@CsvSource({ "en, Padwright: a guide", "de, Padwright: ein Handbuch" })
	void theFolderOfTheGuideIsThatOfTheLanguage(String language, String title) throws IOException {
		String inFolder = ResourceBundle.getBundle("padwright.workbench.messages", Locale.forLanguageTag(language),
				GuideView.class.getClassLoader(), Control.getNoFallbackControl(Control.FORMAT_PROPERTIES)).getString("guide.folder");
		Path contents = GUIDE.resolveSibling(inFolder).resolve(GuideView.FIRST_PAGE);
		assertEquals(title + " · Padwright", GuidePage.of(Files.readString(contents)).title());
	}

	@Test
	void everyPlaceThatHelpLeadsToIsThere() throws IOException {
		for (GuideHandler.Place place : GuideHandler.places().toList()) {
			GuidePage page = GuidePage.of(Files.readString(GUIDE.resolve(place.page())));
			assertTrue(place.anchor().isEmpty() || page.heading(place.anchor()).isPresent(), place.toString());
		}
	}

	/** F1 opens it where it speaks of what is being done. */
	@Test
	void theGuideOpensAtTheWorkInHand() throws Exception {
		try (Driver driver = Driver.withExampleShop(folder)) {
			var editor = driver.open("systems/boehm-b-foot.keys");
			Driver.ui(() -> {
				editor.getSite().getPage().activate(editor);
				return PlatformUI.getWorkbench().getService(IHandlerService.class)
						.executeCommand("padwright.workbench.guide", null);
			});
			GuideView view = (GuideView) Driver.ui(() -> editor.getSite().getPage().findView(GuideView.ID));
			assertTrue(Driver.ui(view::text).startsWith("The language: key systems"), Driver.ui(view::text));
			Driver.ui(() -> {
				editor.getSite().getPage().hideView(view);
				return null;
			});
		}
	}

	@Test
	void wordsTypedLeadToTheirPlaceWithoutTheMouse() throws Exception {
		try (Driver driver = Driver.withExampleShop(folder)) {
			var editor = driver.open("systems/boehm.keys");
			GuideView view = (GuideView) Driver.ui(() -> editor.getSite().getPage().showView(GuideView.ID));
			Text field = Driver.ui(() -> field(editor.getSite().getShell()));
			Driver.ui(() -> {
				field.setText("zzz");
				return null;
			});
			assertEquals(Messages.get("guide.nothing") + "\n", Driver.ui(view::text));
			Driver.ui(() -> {
				field.setText("dialout");
				return null;
			});
			assertTrue(Driver.ui(view::text).startsWith("Bench mode: Indicators\n"), Driver.ui(view::text));
			Driver.ui(() -> {
				field.notifyListeners(SWT.DefaultSelection, new Event());
				return null;
			});
			assertTrue(Driver.ui(view::text).startsWith("Bench mode\n"), Driver.ui(view::text));
			assertEquals("", Driver.ui(field::getText));
			Driver.ui(() -> {
				editor.getSite().getPage().hideView(view);
				return null;
			});
		}
	}

	private static Text field(Composite within) {
		return fields(within).filter(field -> field.getMessage().equals(Messages.get("guide.search"))).findFirst().orElseThrow();
	}

	private static Stream<Text> fields(Composite within) {
		return Stream.of(within.getChildren()).flatMap(child -> child instanceof Text field ? Stream.of(field)
				: child instanceof Composite inner ? fields(inner) : Stream.empty());
	}
}

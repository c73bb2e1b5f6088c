package padwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.jface.preference.IPreferenceNode;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.activities.WorkbenchActivityHelper;
import org.eclipse.ui.commands.ICommandService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import padwright.views.canvas.KeyMap;
import padwright.workbench.bench.Bench;
import padwright.workbench.editor.PlanEditor;
import padwright.workbench.findings.FindingsView;
import padwright.workbench.views.KeyMapView;
import padwright.workbench.views.KeyTableView;
import padwright.workbench.views.RimClockView;

/** Nothing is left in the window of what the platform offers those who write program code. */
class FrameTest {

	private static final String PLAN = "plans/first.plan";
	private static final List<String> OF_PROGRAMMERS = List.of("Team", "Compare With", "Replace With", "Local History",
			"Open With", "Source", "Shift Right", "Shift Left", "Build", "Find Actions", "Tooltip Description", "Quick Fix",
			"Keybindings", "Block Selection", "multi-selection", "Toggle Folding", "Bookmark", "Task", "Word Wrap",
			"Show In", "Refactor", "Run As", "Debug As");

	@TempDir
	private Path folder;
	private Driver driver;

	@BeforeEach
	void openShop() throws Exception {
		driver = Driver.withExampleShop(folder);
	}

	@AfterEach
	void closeShop() throws Exception {
		driver.close();
	}

	private static void assertOfTheTrade(List<String> items, String own) {
		assertTrue(items.contains(own), items.toString());
		assertEquals(List.of(), items.stream().filter(item -> OF_PROGRAMMERS.stream().anyMatch(item::contains)).toList());
	}

	private static List<String> items(Menu menu) {
		return menuItems(menu).map(FrameTest::words).toList();
	}

	private static Stream<MenuItem> menuItems(Menu menu) {
		menu.notifyListeners(SWT.Show, new Event());
		List<MenuItem> items = new ArrayList<>();
		for (MenuItem item : menu.getItems()) {
			items.add(item);
			if (item.getMenu() != null) {
				menuItems(item.getMenu()).forEach(items::add);
			}
		}
		menu.notifyListeners(SWT.Hide, new Event());
		return items.stream();
	}

	private static String words(MenuItem item) {
		return item.getText().replace("&", "").replaceAll("\t.*", "");
	}

	@Test
	void theMenusOfTheWindowAreOfTheTrade() throws Exception {
		driver.open(PLAN);
		assertOfTheTrade(Driver.ui(() -> items(Driver.page().getWorkbenchWindow().getShell().getMenuBar())),
				"Solve Plan");
	}

	@Test
	void viewsThatWereClosedComeBackWithTheLayout() throws Exception {
		Driver.ui(() -> {
			Driver.page().hideView(Driver.page().findView(RimClockView.ID));
			return null;
		});
		Driver.display().asyncExec(() -> menuItems(Driver.page().getWorkbenchWindow().getShell().getMenuBar())
				.filter(item -> words(item).equals("Reset Layout…")).findFirst().orElseThrow()
				.notifyListeners(SWT.Selection, new Event()));
		Driver.answerDialog("Reset the layout", "Reset");
		Driver.waitFor("the clock", () -> Driver.page().findView(RimClockView.ID) != null);
	}

	@Test
	void theMenuOfTheTextIsOfTheTrade() throws Exception {
		var editor = driver.open(PLAN);
		assertEquals(List.of("Undo", "Redo", "Cut", "Copy", "Paste", "Complete", "Cure\u2026", "Feel in the Rim Clock",
				"Go to Definition", "Find Uses", "Solve Plan", "Round of Readings\u2026", "Rename\u2026", "Format"),
				Driver.ui(() -> said(editor.getAdapter(ITextViewer.class).getTextWidget().getMenu())));
	}

	@Test
	void theMenusOfViewsHoldWhatIsDoneAtTheBench() throws Exception {
		driver.open(PLAN);
		var map = (KeyMapView) Driver.view(KeyMapView.ID);
		var table = (KeyTableView) Driver.view(KeyTableView.ID);
		List<String> ofAKey = List.of("Bench Mode", "Feel in the Rim Clock", "Go to Its Text", "Round of Readings\u2026",
				"Solve Plan", "Bench Card");
		assertEquals(ofAKey, Driver.ui(() -> said(map.control().canvas().getMenu())));
		assertEquals(ofAKey, Driver.ui(() -> said(table.control().table().getMenu())));
	}

	/** The items of a menu without its lines, and without what Undo and Redo would take back. */
	static List<String> said(Menu menu) {
		return items(menu).stream().filter(item -> !item.isBlank())
				.map(item -> item.replaceFirst("^(Undo|Redo) .*", "$1")).toList();
	}

	@Test
	void preferencesAreOurOwn() throws Exception {
		List<String> pages = Driver.ui(() -> Arrays
				.stream(PlatformUI.getWorkbench().getPreferenceManager().getRootSubNodes())
				.filter(page -> !WorkbenchActivityHelper.filterItem(page)).map(IPreferenceNode::getLabelText).toList());
		assertEquals(List.of("Padwright"), pages);
	}

	@ParameterizedTest
	@ValueSource(strings = { "solvePlan", "newRound", "paper", "report", "export", "import" })
	void whatNeedsADocumentIsOffWhereThereIsNone(String command) throws Exception {
		assertFalse(Driver.ui(() -> isEnabled(command)));
		driver.open(PLAN);
		Driver.waitFor(command + " can be used", () -> isEnabled(command));
	}

	private static boolean isEnabled(String command) {
		return PlatformUI.getWorkbench().getService(ICommandService.class).getCommand("padwright.workbench." + command)
				.isEnabled();
	}

	@Test
	void whatIsToBePutRightIsGroupedByInstrumentAndKey() throws Exception {
		FindingsView view = (FindingsView) Driver.view(FindingsView.ID);
		Driver.waitFor("the student flute", () -> lines(view).anyMatch(line -> line.contains("StudentFlute")));
		List<String> lines = Driver.ui(view::lines);
		int instrument = lines.indexOf("Plan StudentFlute · plans/student-flute.plan");
		int key = lines.indexOf("Key B");
		assertTrue(instrument >= 0 && instrument < key, lines.toString());
		assertTrue(lines.get(key + 1).contains("B"), lines.toString());
	}

	/** Its marker is made anew while the document opens. */
	@Test
	void aFindingLeadsToItsPlaceInADocumentThatWasClosed() throws Exception {
		FindingsView view = (FindingsView) Driver.view(FindingsView.ID);
		Driver.waitFor("the student flute", () -> lines(view).anyMatch(line -> line.startsWith("The full shims of B ")));
		Driver.ui(() -> {
			Tree tree = ((TreeViewer) view.getSite().getSelectionProvider()).getTree();
			TreeItem shims = items(tree.getItems()).filter(item -> item.getText().startsWith("The full shims of B "))
					.findFirst().orElseThrow();
			tree.setSelection(shims);
			Event open = new Event();
			open.item = shims;
			tree.notifyListeners(SWT.DefaultSelection, open);
			return null;
		});
		Driver.waitFor("the shims of B", () -> Driver.page().getActiveEditor() instanceof PlanEditor editor
				&& editor.getSelectionProvider().getSelection() instanceof ITextSelection chosen
				&& chosen.getText().equals("7.5 7.5 5"));
	}

	private static Stream<TreeItem> items(TreeItem... items) {
		return Stream.of(items).flatMap(item -> Stream.concat(Stream.of(item), items(item.getItems())));
	}

	private static Stream<String> lines(FindingsView view) {
		return view.lines().stream();
	}

	/** What is typed next belongs to the clock. */
	@Test
	void aDoubleClickOnAKeyOpensItsClock() throws Exception {
		driver.open(PLAN);
		Bench bench = Driver.ui(() -> Bench.of(Driver.page().getWorkbenchWindow()));
		Driver.waitFor("the plan on the bench", () -> bench.shown().plan().isPresent());
		KeyMap map = ((KeyMapView) Driver.view(KeyMapView.ID)).control();
		Driver.ui(() -> {
			map.canvas().setFocusOn(Optional.of("F"));
			Event enter = new Event();
			enter.keyCode = SWT.CR;
			enter.character = SWT.CR;
			map.canvas().notifyListeners(SWT.KeyDown, enter);
			map.canvas().notifyListeners(SWT.KeyDown, enter);
			return null;
		});
		Driver.waitFor("the clock",
				() -> Driver.page().getActivePart().getSite().getId().equals(RimClockView.ID));
	}
}

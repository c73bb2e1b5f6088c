package padwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.jface.preference.IPreferenceNode;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.activities.WorkbenchActivityHelper;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.views.contentoutline.ContentOutline;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import padwright.views.canvas.KeyMap;
import padwright.views.canvas.SceneCanvas;
import padwright.workbench.bench.Bench;
import padwright.workbench.findings.FindingsView;
import padwright.workbench.shops.ShopView;
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

	/** All items of a menu, and of those in it. */
	static List<String> items(Menu menu) {
		menu.notifyListeners(SWT.Show, new Event());
		List<String> items = new ArrayList<>();
		for (MenuItem item : menu.getItems()) {
			items.add(item.getText().replace("&", "").replaceAll("\t.*", ""));
			if (item.getMenu() != null) {
				items.addAll(items(item.getMenu()));
			}
		}
		menu.notifyListeners(SWT.Hide, new Event());
		return items;
	}

	@Test
	void theMenusOfTheWindowAreOfTheTrade() throws Exception {
		driver.open(PLAN);
		assertOfTheTrade(Driver.ui(() -> items(Driver.page().getWorkbenchWindow().getShell().getMenuBar())),
				"Solve Plan");
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

	@Test
	void theMenuOfTheShopsHoldsWhatIsDoneWithDocuments() throws Exception {
		driver.open(PLAN);
		Driver.view(ShopView.ID);
		List<String> items = Driver.ui(() -> {
			Tree tree = within(Driver.page().getWorkbenchWindow().getShell()).filter(Tree.class::isInstance)
					.map(Tree.class::cast).filter(one -> one.getMenu() != null && one.isVisible())
					.filter(one -> said(one.getMenu()).contains("New Plan\u2026")).findFirst().orElseThrow();
			return said(tree.getMenu());
		});
		assertTrue(items.containsAll(List.of("New Plan\u2026", "New Key System\u2026")), items.toString());
		assertEquals(List.of(), items.stream().filter(item -> !List.of("Open", "New Plan\u2026", "New Key System\u2026",
				"Close Shop", "What Changed Between the Two Services", "Compare the Two Documents").contains(item)).toList());
	}

	/** The items of a menu without its lines, and without what Undo and Redo would take back. */
	private static List<String> said(Menu menu) {
		return items(menu).stream().filter(item -> !item.isBlank())
				.map(item -> item.replaceFirst("^(Undo|Redo) .*", "$1")).toList();
	}

	private static Stream<Control> within(Composite composite) {
		return Arrays.stream(composite.getChildren()).flatMap(child -> Stream.concat(Stream.of(child),
				child instanceof Composite inner ? within(inner) : Stream.empty()));
	}

	/** Whatever is opened and closed in between. */
	@Test
	void theToolBarKeepsItsOrder() throws Exception {
		List<String> order = List.of("Save", "Undo", "Redo", "Bench Mode", "Round of Readings", "Solve Plan", "Bench Card");
		assertEquals(order, tools(order));
		var editor = driver.open(PLAN);
		assertEquals(order, tools(order));
		Driver.ui(() -> Driver.page().closeEditor(editor, false));
		driver.open("systems/piccolo.keys");
		assertEquals(order, tools(order));
	}

	/** What is said by the tools above the work, from left to right, each by its name among {@code names}. */
	private static List<String> tools(List<String> names) throws Exception {
		return Driver.ui(() -> within(Driver.page().getWorkbenchWindow().getShell()).filter(ToolBar.class::isInstance)
				.map(ToolBar.class::cast).filter(bar -> bar.isVisible() && !isInATab(bar))
				.sorted(Comparator.comparingInt((ToolBar bar) -> bar.toDisplay(0, 0).x))
				.flatMap(bar -> Arrays.stream(bar.getItems())).map(item -> item.getText() + item.getToolTipText())
				.flatMap(said -> names.stream().filter(name -> said.replace("&", "").contains(name))).toList());
	}

	private static boolean isInATab(Control control) {
		return control != null && (control instanceof CTabFolder || isInATab(control.getParent()));
	}

	/** As after a start: the text is there before the outline is. */
	@Test
	void theOutlineKnowsThePlanThatWasOpenBeforeIt() throws Exception {
		Driver.ui(() -> {
			Driver.page().hideView(Driver.page().findViewReference(IPageLayout.ID_OUTLINE));
			return null;
		});
		driver.open(PLAN);
		ContentOutline outline = (ContentOutline) Driver.view(IPageLayout.ID_OUTLINE);
		Driver.waitFor("the plan in the outline", () -> outline.getCurrentPage().getControl() instanceof Tree tree
				&& Arrays.stream(tree.getItems()).anyMatch(item -> item.getText().startsWith("First")));
	}

	@Test
	void aPaperIsShownLargerSmallerAndWhole() throws Exception {
		driver.open(PLAN);
		Driver.waitFor("the plan on the bench",
				() -> Bench.of(Driver.page().getWorkbenchWindow()).shown().plan().isPresent());
		ReportTest.run("padwright.workbench.paper", Map.of("padwright.workbench.paper.kind", "card"));
		Driver.waitFor("a paper", () -> Driver.page().getActiveEditor().getSite().getId().endsWith("pages"));
		Composite shell = Driver.ui(() -> Driver.page().getWorkbenchWindow().getShell());
		SceneCanvas page = Driver.ui(() -> within(shell).filter(Button.class::isInstance)
				.filter(button -> ((Button) button).getText().replace("&", "").equals("Larger"))
				.flatMap(button -> within(button.getParent().getParent())).filter(SceneCanvas.class::isInstance)
				.map(SceneCanvas.class::cast).findFirst().orElseThrow());
		String whole = painted(page);
		Driver.pressButton(shell, "Larger");
		assertFalse(whole.equals(painted(page)), "nothing is larger");
		Driver.pressButton(shell, "Smaller");
		assertTrue(whole.equals(painted(page)), "not as before");
		Driver.pressButton(shell, "Larger");
		Driver.pressButton(shell, "Whole page");
		assertTrue(whole.equals(painted(page)), "not whole");
	}

	private static String painted(Control control) throws Exception {
		ScreensTest.settle();
		return Driver.ui(() -> {
			Point corner = control.toDisplay(0, 0);
			Image image = new Image(control.getDisplay(), control.getSize().x, control.getSize().y);
			GC gc = new GC(control.getDisplay());
			gc.copyArea(image, corner.x, corner.y);
			gc.dispose();
			String seen = HexFormat.of().formatHex(image.getImageData().data);
			image.dispose();
			return seen;
		});
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

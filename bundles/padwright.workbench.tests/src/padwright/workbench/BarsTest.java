package padwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.views.contentoutline.ContentOutline;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.views.canvas.SceneCanvas;
import padwright.workbench.bench.Bench;
import padwright.workbench.shops.ShopView;

/** What stands around the work: the tool bar, the shops, the outline, the bar over a paper. */
class BarsTest {

	private static final String PLAN = "plans/first.plan";

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

	@Test
	void theMenuOfTheShopsHoldsWhatIsDoneWithDocuments() throws Exception {
		driver.open(PLAN);
		Driver.view(ShopView.ID);
		List<String> items = Driver.ui(() -> {
			Tree tree = within(Driver.page().getWorkbenchWindow().getShell()).filter(Tree.class::isInstance)
					.map(Tree.class::cast).filter(one -> one.getMenu() != null && one.isVisible())
					.filter(one -> FrameTest.said(one.getMenu()).contains("New Plan\u2026")).findFirst().orElseThrow();
			return FrameTest.said(tree.getMenu());
		});
		assertTrue(items.containsAll(List.of("New Plan\u2026", "New Key System\u2026")), items.toString());
		assertEquals(List.of(), items.stream().filter(item -> !List.of("Open", "New Plan\u2026", "New Key System\u2026",
				"Close Shop", "What Changed Between the Two Services", "Compare the Two Documents").contains(item)).toList());
	}

	private static Stream<Control> within(Composite composite) {
		return Arrays.stream(composite.getChildren()).flatMap(child -> Stream.concat(Stream.of(child),
				child instanceof Composite inner ? within(inner) : Stream.empty()));
	}

	/** Whatever is opened and closed in between. */
	@Test
	void theToolBarKeepsItsOrder() throws Exception {
		List<String> order = List.of("Save", "Bench Mode", "Round of Readings", "Solve Plan", "Bench Card");
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
}

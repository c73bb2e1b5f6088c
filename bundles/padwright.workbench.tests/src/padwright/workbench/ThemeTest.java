package padwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.workbench.findings.FindingsView;
import padwright.workbench.views.CupSectionView;
import padwright.workbench.views.KeyMapView;
import padwright.workbench.views.KeyTableView;
import padwright.workbench.views.RegulationView;
import padwright.workbench.views.RimClockView;

/** The theme changes under an open window, there and back, and everything in it follows. */
class ThemeTest {

	private static final List<String> VIEWS = List.of(KeyMapView.ID, RimClockView.ID, CupSectionView.ID, FindingsView.ID,
			RegulationView.ID, KeyTableView.ID);
	private static final String CHANGE = "padwright.workbench.darkTheme";
	private static final float MIDDLE = 0.5f;

	@TempDir
	private Path folder;
	private Driver driver;

	@BeforeEach
	void openShop() throws Exception {
		driver = Driver.withExampleShop(folder);
		driver.open("plans/first.plan");
		for (String view : VIEWS) {
			Driver.view(view);
		}
		Driver.waitFor("rows", () -> rows(shell()) > 3);
		ScreensTest.settle();
	}

	@AfterEach
	void closeShop() throws Exception {
		driver.close();
	}

	private static Shell shell() {
		return Driver.page().getWorkbenchWindow().getShell();
	}

	@Test
	void everythingTurnsDarkAndBack() throws Exception {
		Map<String, String> before = Driver.ui(() -> colours(shell()));
		int rows = Driver.ui(() -> rows(shell()));
		assertFalse(isDark());
		change("theme-1-dark");
		assertTrue(isDark());
		assertEquals(rows, Driver.ui(() -> rows(shell())));
		assertEquals(List.of(), Driver.ui(() -> lists(shell()).stream()
				.filter(list -> brightness(list.getBackground().getRGB()) > MIDDLE).map(Object::toString).toList()));
		assertEquals(List.of(), Driver.ui(() -> images(shell()).filter(image -> !isSeenThrough(image))
				.map(image -> image.toString()).toList()), "squares around icons");
		Driver.view(RegulationView.ID);
		ScreensTest.settle();
		ScreensTest.picture(Driver.ui(ThemeTest::shell), "theme-2-dark");
		Driver.view(KeyTableView.ID);
		change("theme-3-light");
		assertFalse(isDark());
		assertEquals(rows, Driver.ui(() -> rows(shell())));
		Map<String, String> after = Driver.ui(() -> colours(shell()));
		TreeSet<String> changed = new TreeSet<>();
		before.forEach((control, colour) -> {
			if (after.containsKey(control) && !after.get(control).equals(colour)) {
				changed.add(control + ": " + colour + " is now " + after.get(control));
			}
		});
		assertEquals(new TreeSet<>(), changed);
	}

	private static void change(String picture) throws Exception {
		boolean dark = isDark();
		Driver.command(CHANGE);
		Driver.waitFor("the other theme", () -> isDark(lists(shell())) != dark);
		ScreensTest.settle();
		ScreensTest.picture(Driver.ui(ThemeTest::shell), picture);
	}

	/** By the text of the plan, which the platform paints. */
	private static boolean isDark() throws Exception {
		return Driver.ui(() -> isDark(lists(shell())));
	}

	private static boolean isDark(List<Control> lists) {
		return lists.stream().filter(StyledText.class::isInstance)
				.allMatch(text -> brightness(text.getBackground().getRGB()) < MIDDLE);
	}

	private static float brightness(RGB colour) {
		return colour.getHSB()[2];
	}

	/** All in which rows or lines stand, and that is to be seen. */
	private static List<Control> lists(Composite within) {
		return all(within, "").keySet().stream().filter(Control::isVisible)
				.filter(control -> control instanceof Table || control instanceof Tree || control instanceof StyledText).toList();
	}

	private static int rows(Composite within) {
		return lists(within).stream().filter(Table.class::isInstance).mapToInt(table -> ((Table) table).getItemCount()).sum();
	}

	/**
	 * The ground and ink of everything, by where it is in the window; without the columns of the text's ruler, which take
	 * theirs from settings of the platform as soon as they have something to show.
	 */
	private static Map<String, String> colours(Composite within) {
		Map<String, String> colours = new LinkedHashMap<>();
		all(within, "").forEach((control, path) -> {
			if (control.isVisible() && !path.contains("RulerCanvas")) {
				colours.put(path, control.getBackground().getRGB() + " " + control.getForeground().getRGB());
			}
		});
		return colours;
	}

	/** Those of tools, able or not, of tabs and of rows. */
	private static Stream<Image> images(Composite within) {
		return all(within, "").keySet().stream().flatMap(control -> control instanceof ToolBar bar
				? Stream.of(bar.getItems()).flatMap(item -> Stream.of(item.getImage(), item.getDisabledImage()))
				: control instanceof CTabFolder tabs ? Stream.of(tabs.getItems()).map(CTabItem::getImage)
				: control instanceof Tree tree ? Stream.of(tree.getItems()).map(TreeItem::getImage)
				: control instanceof Table table ? Stream.of(table.getItems()).map(TableItem::getImage)
				: Stream.empty()).filter(Objects::nonNull);
	}

	/** Whether the ground is seen at one of its corners. */
	private static boolean isSeenThrough(Image image) {
		ImageData data = image.getImageData();
		ImageData mask = data.getTransparencyMask();
		int right = data.width - 1;
		int below = data.height - 1;
		return Stream.of(new Point(0, 0), new Point(right, 0), new Point(0, below), new Point(right, below))
				.anyMatch(corner -> data.getTransparencyType() == SWT.TRANSPARENCY_ALPHA ? data.getAlpha(corner.x, corner.y) < 128
						: data.getTransparencyType() != SWT.TRANSPARENCY_NONE && mask.getPixel(corner.x, corner.y) == 0);
	}

	private static Map<Control, String> all(Composite within, String path) {
		Map<Control, String> all = new LinkedHashMap<>();
		int index = 0;
		for (Control child : within.getChildren()) {
			String here = path + "/" + child.getClass().getSimpleName() + index++;
			all.put(child, here);
			if (child instanceof Composite inner) {
				all.putAll(all(inner, here));
			}
		}
		return all;
	}
}

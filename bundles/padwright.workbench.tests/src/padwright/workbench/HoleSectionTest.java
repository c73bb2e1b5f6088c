package padwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.views.canvas.HoleSectionControl;
import padwright.views.hole.HoleSize;
import padwright.workbench.bench.Bench;
import padwright.workbench.views.HoleSectionView;

/** Sizes of an inherited key changed in the section through its hole, told by the text that comes of it. */
class HoleSectionTest {

	/** So far that a point of the screen is finer than a step. */
	private static final double ENLARGED = 6;
	/** Points around a size for the ring of the focus. */
	private static final int RING = 3;
	/** What the bore of 19 mm is wide with its knobs, a half knob, and from the end of a line to its middle, mm. */
	private static final double BORE = 20.1;
	private static final double KNOB = 0.55;
	private static final double END = 0.4;
	private static final String UNDO = "org.eclipse.ui.edit.undo";

	@TempDir
	private Path folder;
	private Driver driver;
	private Drawing flute;
	private String before;
	private HoleSectionControl section;

	@BeforeEach
	void openFlute() throws Exception {
		driver = Driver.withExampleShop(folder);
		flute = Drawing.of(driver, "systems/boehm-b-foot.keys", "BoehmB");
		before = flute.text();
		HoleSectionView view = (HoleSectionView) Driver.view(HoleSectionView.ID);
		section = Driver.ui(view::control);
		Bench bench = Driver.ui(() -> Bench.of(Driver.page().getWorkbenchWindow()));
		Driver.ui(() -> {
			bench.choosePart(flute.layout().editing().layout().item("key:A").orElseThrow().thing());
			return null;
		});
		Driver.waitFor("the section through A", () -> section.editing().section()
				.filter(drawn -> drawn.item().id().equals("key:A")).isPresent());
	}

	@AfterEach
	void closeShop() throws Exception {
		driver.close();
	}

	/** Drags a size from one of its ends until its figure is shown, then lets go. */
	private void drag(HoleSize size, String figure) throws Exception {
		Optional<String> shown = Driver.ui(() -> {
			Rectangle place = section.place(size).orElseThrow();
			double scale = (section.place(HoleSize.BORE).orElseThrow().width - 2 * RING) / BORE;
			int x = (int) Math.round(place.x + place.width - RING - KNOB * scale);
			int y = (int) Math.round(place.y + place.height - RING - END * scale);
			mouse(SWT.MouseDown, x, y);
			int step = 1;
			while (step < 400 && !section.editing().figure().equals(Optional.of(figure))) {
				mouse(SWT.MouseMove, x + step++, y);
			}
			Optional<String> last = section.editing().figure();
			mouse(SWT.MouseUp, x + step, y);
			return last;
		});
		assertEquals(Optional.of(figure), shown);
	}

	private void mouse(int type, int x, int y) {
		Event event = new Event();
		event.button = 1;
		event.x = x;
		event.y = y;
		section.canvas().notifyListeners(type, event);
	}

	private void key(char character, int code, int mask) throws Exception {
		Driver.ui(() -> {
			Event event = new Event();
			event.character = character;
			event.keyCode = code;
			event.stateMask = mask;
			section.canvas().notifyListeners(SWT.KeyDown, event);
			return null;
		});
	}

	@Test
	void sizesAreDraggedAndEachIsOneStep() throws Exception {
		Driver.ui(() -> {
			section.canvas().zoom(ENLARGED);
			return null;
		});
		drag(HoleSize.BORE, "Bore 19.4 mm");
		flute.expect("\tchange joint body bore 19.4\n");
		drag(HoleSize.ARM, "Arm 13 mm");
		flute.expect("\tchange A arm 13\n");
		Driver.command(UNDO);
		Driver.command(UNDO);
		assertEquals(before, flute.text());
	}

	@Test
	void sizesAreChangedByKeyboardAlone() throws Exception {
		Driver.ui(() -> {
			section.canvas().setFocus();
			while (!section.canvas().focus().equals(Optional.of(HoleSize.RIM.id()))) {
				Event tab = new Event();
				tab.detail = SWT.TRAVERSE_TAB_NEXT;
				section.canvas().notifyListeners(SWT.Traverse, tab);
			}
			return null;
		});
		key('\0', SWT.ARROW_UP, SWT.MOD1);
		flute.expect("\tchange A hole 12.2 rim 1.1\n");
		key('\0', SWT.ARROW_DOWN, SWT.MOD1);
		flute.expect("\tchange A hole 12.2 rim 1\n");
		key('\r', SWT.CR, 0);
		Driver.ui(() -> {
			Text size = Arrays.stream(section.canvas().getChildren()).filter(Text.class::isInstance)
					.map(Text.class::cast).findFirst().orElseThrow();
			assertEquals("1", size.getText());
			size.setText("1.25");
			size.notifyListeners(SWT.DefaultSelection, new Event());
			return null;
		});
		flute.expect("\tchange A hole 12.2 rim 1.25\n");
	}

	@Test
	void theSectionFollowsWhatIsChosenAndGoesFromHoleToHole() throws Exception {
		Driver.pressButton(section, "Next hole");
		assertEquals("G2", Driver.ui(() -> section.editing().section().orElseThrow().item().thing().getName()));
		Driver.pressButton(section, "Hole before");
		Driver.pressButton(section, "Hole before");
		assertEquals("As", Driver.ui(() -> section.editing().section().orElseThrow().item().thing().getName()));
	}
}

package padwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import javax.imageio.ImageIO;

import org.eclipse.jface.text.ITextSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.views.Palette;
import padwright.views.board.BoardCard;
import padwright.views.board.BoardLane;
import padwright.views.canvas.Board;
import padwright.views.canvas.Photos;
import padwright.views.canvas.SceneCanvas;
import padwright.views.photos.Photo;
import padwright.workbench.board.BoardView;
import padwright.workbench.editor.PlanEditor;
import padwright.workbench.views.PhotosView;
import padwright.workup.next.NextStep.Kind;

/** A working day of the example year on the board, and photographs beside a plan. */
class BoardTest {

	private static final LocalDate DAY = LocalDate.of(2026, 10, 14);
	private static final String OCTOBER = "plans/10-october.plan";

	@TempDir
	private Path folder;
	private Driver driver;
	private Board board;

	@BeforeEach
	void openTheYear() throws Exception {
		driver = Driver.withExampleYear(folder);
		Driver.ui(() -> {
			Driver.page().getWorkbenchWindow().getShell().setSize(1600, 1000);
			return null;
		});
		PlanEditor editor = driver.open(OCTOBER);
		BoardView view = (BoardView) Driver.view(BoardView.ID);
		Driver.ui(() -> {
			Driver.page().activate(editor);
			view.tellFor(DAY);
			return null;
		});
		board = view.control();
		Driver.waitFor("the day on the board",
				() -> board.state().today().equals(DAY) && plans(Kind.AGREE).contains("J050"));
	}

	/** A shop that is closed leaves the board. */
	@AfterEach
	void closeTheYear() throws Exception {
		driver.close();
		Driver.waitFor("an empty board", () -> board.state().count() == 0);
	}

	private List<String> plans(Kind kind) {
		return board.state().lanes().stream().filter(lane -> lane.kind() == kind).map(BoardLane::cards)
				.flatMap(List::stream).map(BoardCard::plan).toList();
	}

	/** Opens a card until its line is there: a board that is drawn anew just then forgets what was gone to. */
	private void open(String card, PlanEditor editor, String line) throws Exception {
		SceneCanvas canvas = board.canvas();
		Driver.waitFor(line, () -> {
			canvas.setFocus();
			canvas.setFocusOn(Optional.of(card));
			enter(canvas);
			enter(canvas);
			return lineAtCaret(editor).startsWith(line);
		});
	}

	private static void enter(SceneCanvas canvas) {
		Event event = new Event();
		event.character = SWT.CR;
		event.keyCode = SWT.CR;
		canvas.notifyListeners(SWT.KeyDown, event);
	}

	private static String lineAtCaret(PlanEditor editor) {
		try {
			int line = ((ITextSelection) editor.getSelectionProvider().getSelection()).getStartLine();
			var region = Driver.document(editor).getLineInformation(line);
			return Driver.document(editor).get(region.getOffset(), region.getLength()).strip();
		} catch (org.eclipse.jface.text.BadLocationException gone) {
			throw new AssertionError(gone);
		}
	}

	@Test
	void aDayOfTheYearStandsWhereItWaitsOrGoesOn() throws Exception {
		assertTrue(plans(Kind.AGREE).containsAll(List.of("J050", "J051", "J052")), plans(Kind.AGREE).toString());
		assertEquals(List.of("J052"), plans(Kind.WAIT));
		assertEquals(List.of("J049"), plans(Kind.MORNING));
		assertEquals(List.of("J049"), plans(Kind.WORK));
		PlanEditor editor = driver.open(OCTOBER);
		open("AGREE J051", editor, "estimate on 2026-10-12");
		open("MORNING J049", editor, "clamped F on 2026-10-13");
		open("WAIT J052", editor, "waits for parts");
	}

	@Test
	void oneHandAloneIsShown() throws Exception {
		Driver.ui(() -> {
			board.chooseHand(Optional.of("K"));
			return null;
		});
		assertEquals(List.of("J050"), plans(Kind.AGREE));
		assertEquals(List.of(), plans(Kind.MORNING));
		assertEquals(List.of("K", "L"), board.state().hands());
		Driver.ui(() -> {
			board.chooseHand(Optional.empty());
			return null;
		});
		assertEquals(List.of("J049"), plans(Kind.MORNING));
	}

	@Test
	void itFollowsWhatIsTypedAndNotSaved() throws Exception {
		PlanEditor editor = driver.open(OCTOBER);
		Driver.replace(editor, "\t\tstage look took 20 minutes on 2026-10-13 by \"K\"\n",
				"\t\tstage look took 20 minutes on 2026-10-13 by \"K\"\n\t\tagreed small on 2026-10-14 by \"M\"\n");
		Driver.waitFor("the answer", () -> plans(Kind.WORK).contains("J050"));
		assertFalse(plans(Kind.AGREE).contains("J050"));
		assertTrue(board.state().hands().contains("M"));
	}

	@Test
	void itsCardsAreHeardAndItsPicturesTaken() throws Exception {
		SceneCanvas canvas = board.canvas();
		zoomBoard();
		ScreensTest.settle();
		ScreensTest.picture(board, "board");
		Driver.ui(() -> {
			board.setPalette(Palette.dark());
			return null;
		});
		ScreensTest.settle();
		ScreensTest.picture(board, "board-in-the-dark");
		Driver.ui(() -> {
			board.setPalette(Palette.light());
			return null;
		});
		zoomBoard();
		assertTrue(Driver.ui(() -> canvas.spoken("AGREE J050")).startsWith("Waits for agreement. flute of six keys, drawn holes Y-140"));
		assertTrue(Driver.ui(() -> canvas.spoken("MORNING J049")).contains("feel again, the morning after: F"));
	}

	private static void zoomBoard() throws Exception {
		Driver.ui(() -> {
			Driver.page().toggleZoom(Driver.page().findViewReference(BoardView.ID));
			return null;
		});
	}

	@Test
	void photographsAreShownSmallAndMissingOnesTold() throws Exception {
		Path plan = driver.path(OCTOBER);
		BufferedImage taken = new BufferedImage(1600, 1200, BufferedImage.TYPE_INT_RGB);
		for (int x = 0; x < 1600; x++) {
			for (int y = 0; y < 1200; y++) {
				taken.setRGB(x, y, x / 8 << 16 | y / 6 << 8 | 90);
			}
		}
		ImageIO.write(taken, "jpeg", plan.resolveSibling("rim.jpg").toFile());
		PlanEditor editor = driver.open(OCTOBER);
		Photos photos = ((PhotosView) Driver.view(PhotosView.ID)).control();
		Driver.replace(editor, "\t\tclamped F on 2026-10-13 by \"L\"\n", "\t\tclamped F on 2026-10-13 by \"L\"\n"
				+ "\t\tphoto \"rim.jpg\" \"the rim at 3\" of F on 2026-10-13\n\t\tphoto \"gone.jpg\"\n");
		Driver.waitFor("both", () -> photos.photos().photos().size() == 2
				&& photos.photos().photos().get(0).small().isPresent());
		Photo first = photos.photos().photos().get(0);
		assertEquals("F \u00B7 the rim at 3 \u00B7 2026-10-13", first.words());
		assertEquals(320, first.small().orElseThrow().width());
		assertEquals("gone.jpg is not there", photos.photos().photos().get(1).trouble());
		ScreensTest.settle();
		ScreensTest.picture(photos, "photographs");
		assertEquals(1600, ImageIO.read(plan.resolveSibling("rim.jpg").toFile()).getWidth());
		assertFalse(Driver.text(editor).contains("base64"));
		Files.delete(plan.resolveSibling("rim.jpg"));
	}
}

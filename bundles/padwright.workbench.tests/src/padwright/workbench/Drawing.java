package padwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.xtext.resource.XtextResource;

import padwright.views.canvas.LayoutControl;
import padwright.views.canvas.SceneCanvas;
import padwright.workbench.editor.PlanEditor;
import padwright.workbench.views.LayoutView;

/** Draws in the layout view from the thread of a test, by the events of mouse and keyboard. */
final class Drawing {

	private static final double ENLARGED = 30;

	private final PlanEditor editor;
	private final LayoutControl layout;
	private final SceneCanvas canvas;

	private Drawing(PlanEditor editor, LayoutControl layout) {
		this.editor = editor;
		this.layout = layout;
		canvas = layout.canvas();
	}

	/** Shows the layout of a document, enlarged so far that a point of the screen is finer than a step. */
	static Drawing of(Driver driver, String document, String system) throws Exception {
		PlanEditor editor = driver.open(document);
		LayoutView view = (LayoutView) Driver.view(LayoutView.ID);
		LayoutControl layout = Driver.ui(view::control);
		Driver.waitFor(system, () -> layout.editing().layout().system()
				.filter(drawn -> drawn.getName().equals(system)).isPresent());
		Drawing drawing = new Drawing(editor, layout);
		drawing.settled();
		Driver.ui(() -> {
			layout.canvas().showWhole();
			layout.canvas().zoom(ENLARGED);
			return null;
		});
		return drawing;
	}

	LayoutControl layout() {
		return layout;
	}

	PlanEditor editor() {
		return editor;
	}

	String text() throws Exception {
		return Driver.text(editor);
	}

	/** Waits until the text says something, and the drawing is of that text. */
	void expect(String words) throws Exception {
		try {
			Driver.waitFor(words, () -> Driver.document(editor).get().contains(words));
		} catch (AssertionError never) {
			throw new AssertionError(never.getMessage() + ", but\n" + text(), never);
		}
		settled();
	}

	/** Waits until the drawing is of the text as it is. */
	void settled() throws Exception {
		Driver.waitFor("the text drawn", () -> layout.editing().layout().system()
				.map(drawn -> ((XtextResource) drawn.eResource()).getParseResult()
						.getRootNode().getText()).equals(Optional.of(Driver.document(editor).get())));
	}

	/** Pushes the button of a tool. */
	void tool(String name) throws Exception {
		Driver.ui(() -> {
			Button button = Arrays.stream(layout.getChildren()).filter(Composite.class::isInstance)
					.flatMap(row -> Arrays.stream(((Composite) row).getChildren()))
					.filter(Button.class::isInstance).map(Button.class::cast)
					.filter(each -> each.getText().equals(name)).findFirst().orElseThrow();
			button.notifyListeners(SWT.Selection, new Event());
			return null;
		});
	}

	/** Turns the wheel until a place of the tube is to be seen; tells where it is then. */
	private Point seen(double along, double around) {
		for (int turns = 0; turns < 2000; turns++) {
			Point point = layout.point(along, around);
			Rectangle area = canvas.getClientArea();
			boolean aside = point.x < 10 || point.x > area.width - 10;
			if (!aside && point.y >= 10 && point.y <= area.height - 10) {
				return point;
			}
			Event wheel = new Event();
			wheel.stateMask = aside ? SWT.MOD2 : 0;
			wheel.count = (aside ? point.x < 10 : point.y < 10) ? 3 : -3;
			canvas.notifyListeners(SWT.MouseVerticalWheel, wheel);
		}
		throw new AssertionError("never seen: " + along);
	}

	private void mouse(int type, Point point, int mask) {
		Event event = new Event();
		event.button = 1;
		event.x = point.x;
		event.y = point.y;
		event.stateMask = mask;
		canvas.notifyListeners(type, event);
	}

	void click(double along, double around) throws Exception {
		Driver.ui(() -> {
			Point point = seen(along, around);
			mouse(SWT.MouseDown, point, 0);
			mouse(SWT.MouseUp, point, 0);
			return null;
		});
	}

	/** Drags from one place of the tube to another near it. */
	void drag(double fromAlong, double fromAround, double toAlong, double toAround) throws Exception {
		hold(fromAlong, fromAround, toAlong, toAround);
		letGo(toAlong, toAround);
	}

	/** Drags, and holds what is dragged there. */
	void hold(double fromAlong, double fromAround, double toAlong, double toAround) throws Exception {
		Driver.ui(() -> {
			Point from = seen(fromAlong, fromAround);
			mouse(SWT.MouseDown, from, 0);
			mouse(SWT.MouseMove, new Point(from.x + 5, from.y), SWT.BUTTON1);
			mouse(SWT.MouseMove, layout.point(toAlong, toAround), SWT.BUTTON1);
			assertTrue(layout.editing().isDragging(), "nothing is dragged from " + fromAlong);
			return null;
		});
	}

	void letGo(double along, double around) throws Exception {
		Driver.ui(() -> {
			mouse(SWT.MouseUp, layout.point(along, around), SWT.BUTTON1);
			return null;
		});
	}

	/** Chooses from the menu that opens, or from the context menu. */
	void choose(String item) throws Exception {
		Driver.waitFor(item, () -> layout.choice().isPresent());
		Driver.ui(() -> {
			press(layout.choice().orElseThrow(), item);
			layout.choice().orElseThrow().setVisible(false);
			return null;
		});
	}

	void contextMenu(String item) throws Exception {
		Driver.ui(() -> {
			canvas.getMenu().notifyListeners(SWT.Show, new Event());
			press(canvas.getMenu(), item);
			return null;
		});
	}

	private static void press(Menu menu, String text) {
		MenuItem item = Arrays.stream(menu.getItems()).filter(each -> each.getText().equals(text)).findFirst()
				.orElseThrow(() -> new AssertionError(text + " is none of "
						+ Arrays.stream(menu.getItems()).map(MenuItem::getText).toList()));
		if (!item.isEnabled()) {
			throw new AssertionError(text + " cannot be chosen");
		}
		item.notifyListeners(SWT.Selection, new Event());
	}

	void key(char character, int code, int mask) throws Exception {
		Driver.ui(() -> {
			canvas.setFocus();
			Event event = new Event();
			event.character = character;
			event.keyCode = code;
			event.stateMask = mask;
			canvas.notifyListeners(SWT.KeyDown, event);
			return null;
		});
	}

	/** Presses Tab until something has the focus. */
	void tabTo(String id) throws Exception {
		Driver.ui(() -> {
			canvas.setFocus();
			for (int steps = 0; steps < 200 && !canvas.focus().equals(Optional.of(id)); steps++) {
				Event tab = new Event();
				tab.detail = SWT.TRAVERSE_TAB_NEXT;
				canvas.notifyListeners(SWT.Traverse, tab);
			}
			assertEquals(Optional.of(id), canvas.focus());
			return null;
		});
	}

	void key(char letter) throws Exception {
		key(letter, letter, 0);
	}

	void enter() throws Exception {
		key('\r', SWT.CR, 0);
	}
}

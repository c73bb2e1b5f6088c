package padwright.views.canvas;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import padwright.drawing.java2d.Hits;
import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Scene;
import padwright.views.Palette;
import padwright.views.scenes.SceneSource;
import padwright.views.scenes.Target;
import padwright.views.scenes.Targets;
import padwright.views.scenes.Viewport;

/**
 * A drawing that can be touched: named groups answer to mouse and keyboard. Ctrl with the wheel or with + and − zooms,
 * 0 shows all, dragging pans. Tab and the arrows move the focus from one target to the next, Enter touches it, Esc lets
 * go. Until it is zoomed or moved, the whole drawing is shown.
 */
public final class SceneCanvas extends Canvas {

	/** How near to a target the mouse must be, in points. */
	private static final double REACH = 4;
	private static final double RING = 3;

	private final SceneListener listener;
	private Palette palette;
	private SceneSource source = aspect -> new Scene("", aspect, 1, List.of());
	private Scene scene = source.draw(1);
	private Targets targets = Targets.of(scene);
	private Viewport view = new Viewport(1, 0, 0);
	private boolean whole = true;
	private boolean fixed;
	private Optional<String> focus = Optional.empty();
	private String name = "";
	private UnaryOperator<String> meaning = text -> text;

	/**
	 * An empty canvas.
	 *
	 * @param listener told what is done to the drawing
	 */
	public SceneCanvas(Composite parent, Palette palette, SceneListener listener) {
		super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND);
		this.listener = listener;
		this.palette = palette;
		addListener(SWT.Paint, event -> paint(event.gc));
		addListener(SWT.Resize, event -> redrawn());
		addListener(SWT.FocusIn, event -> redraw());
		addListener(SWT.FocusOut, event -> redraw());
		new CanvasMouse(this);
		new CanvasKeys(this);
		new CanvasAccess(this);
	}

	/** Shows another drawing; the focus stays on the target of the same name. */
	public void setSource(SceneSource source) {
		checkWidget();
		this.source = source;
		redrawn();
	}

	public void setPalette(Palette palette) {
		checkWidget();
		this.palette = palette;
		redrawn();
	}

	/** What a screen reader calls the whole drawing. */
	public void setName(String name) {
		this.name = name;
	}

	/** Shown over a target instead of its own words; given its id. */
	public void setTooltips(UnaryOperator<String> tooltips) {
		meaning = tooltips;
	}

	/** What a screen reader says of a target. */
	public String spoken(String id) {
		return meaning(id);
	}

	/** Moves the focus inside the drawing to a target, or away from all. */
	public void setFocusOn(Optional<String> id) {
		checkWidget();
		focus = id.filter(wanted -> targets.named(wanted).isPresent());
		redraw();
	}

	/** The target with the focus. */
	public Optional<String> focus() {
		return focus;
	}

	/** Shows all of the drawing again. */
	public void showWhole() {
		whole = true;
		redrawn();
	}

	/** From now on it cannot be zoomed or moved: a finger that trembles still touches. */
	public void fix() {
		fixed = true;
	}

	boolean isFixed() {
		return fixed;
	}

	/** Enlarges about the middle; less than 1 makes smaller. */
	public void zoom(double factor) {
		Rectangle area = getClientArea();
		zoom(factor, area.width / 2.0, area.height / 2.0);
	}

	void zoom(double factor, double x, double y) {
		look(view.zoomed(factor, x, y));
	}

	void pan(double dx, double dy) {
		look(view.moved(dx, dy));
	}

	private void look(Viewport next) {
		if (!fixed) {
			whole = false;
			view = next;
			redraw();
		}
	}

	private void redrawn() {
		Rectangle area = getClientArea();
		if (area.width > 0 && area.height > 0) {
			double aspect = area.width / (double) area.height;
			scene = source.draw(aspect);
			targets = Targets.of(scene);
			focus = focus.filter(id -> targets.named(id).isPresent());
			view = whole ? Viewport.whole(scene, area.width, area.height) : view;
		}
		redraw();
	}

	private void paint(GC gc) {
		gc.setBackground(Colours.of(palette.ground()));
		gc.fillRectangle(getClientArea());
		ScenePainter.paint(gc, scene, palette, view);
		if (isFocusControl()) {
			focus.flatMap(targets::named).ifPresent(target -> ring(gc, target));
		}
	}

	private void ring(GC gc, Target target) {
		Rectangle area = onScreen(target);
		gc.setLineWidth(4);
		gc.setForeground(Colours.of(palette.ground()));
		gc.drawRoundRectangle(area.x, area.y, area.width, area.height, 8, 8);
		gc.setLineWidth(2);
		gc.setForeground(Colours.of(palette.accent()));
		gc.drawRoundRectangle(area.x, area.y, area.width, area.height, 8, 8);
	}

	/** Where a target is in the window, its ring included. */
	Rectangle onScreen(Target target) {
		Bounds bounds = target.bounds();
		int left = (int) Math.floor(view.windowX(bounds.left()) - RING);
		int top = (int) Math.floor(view.windowY(bounds.top()) - RING);
		return new Rectangle(left, top, (int) Math.ceil(view.windowX(bounds.right()) + RING) - left,
				(int) Math.ceil(view.windowY(bounds.bottom()) + RING) - top);
	}

	Optional<String> at(double x, double y) {
		return Hits.at(scene, view.sceneX(x), view.sceneY(y), REACH / view.scale()).flatMap(Group::id);
	}

	Viewport view() {
		return view;
	}

	Targets targets() {
		return targets;
	}

	SceneListener listener() {
		return listener;
	}

	String name() {
		return name;
	}

	String meaning(String id) {
		String told = meaning.apply(id);
		return told.equals(id) ? targets.named(id).map(Target::meaning).orElse(id) : told;
	}

	/** Moves the focus by keyboard, and the drawing so far that it is seen. */
	void focusOn(Target target) {
		focus = Optional.of(target.id());
		Rectangle area = getClientArea();
		if (!whole) {
			view = view.showing(target.bounds(), area.width, area.height);
		}
		redraw();
		getAccessible().setFocus(targets.all().indexOf(target));
		listener.focused(target.id());
	}

	@Override
	public Point computeSize(int widthHint, int heightHint, boolean changed) {
		return new Point(widthHint == SWT.DEFAULT ? 320 : widthHint, heightHint == SWT.DEFAULT ? 240 : heightHint);
	}
}

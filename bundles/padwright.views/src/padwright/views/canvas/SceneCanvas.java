package padwright.views.canvas;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
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
	/** Letters so high can be read, in points. */
	private static final double READABLE = 10;

	private final SceneListener listener;
	private Palette palette;
	private SceneSource source = aspect -> new Scene("", aspect, 1, List.of());
	private Scene scene = source.draw(1);
	private Targets targets = Targets.of(scene);
	private Viewport view = new Viewport(1, 0, 0);
	private Optional<Moving> moving = Optional.empty();
	private boolean whole = true;
	private boolean fixed;
	private boolean isOneStop;
	private Optional<String> focus = Optional.empty();
	private String name = "";
	private UnaryOperator<String> meaning = text -> text;
	private Predicate<String> isChosen = id -> false;

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
		addListener(SWT.Dispose, event -> stopMoving());
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
		stopMoving();
		redrawn();
	}

	/**
	 * Shows something on its way over a picture of all else, which is painted but once, so that a drag stays smooth. What is
	 * hit stays as it was, until there is another source.
	 *
	 * @param still all else, as large as the drawing; only asked for where nothing moves yet
	 */
	void setMoving(Supplier<Scene> still, Scene moved) {
		moving = Optional.of(moving.map(before -> before.to(moved)).orElseGet(() -> new Moving(still.get(), moved)));
		redraw();
	}

	private void stopMoving() {
		moving.ifPresent(Moving::dispose);
		moving = Optional.empty();
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

	/** Which targets are chosen, pressed or otherwise on, for a screen reader; given their ids. */
	public void setChosen(Predicate<String> targets) {
		isChosen = targets;
	}

	boolean isChosen(String id) {
		return isChosen.test(id);
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

	/** From now on Tab goes to the next control at once: for a drawing that is one field among others. */
	public void leaveWithTab() {
		isOneStop = true;
	}

	boolean isOneStop() {
		return isOneStop;
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
			boolean isOtherScale = next.scale() != view.scale();
			whole = false;
			view = next;
			if (isOtherScale) {
				redrawn();
			} else {
				redraw();
			}
		}
	}

	private void redrawn() {
		Rectangle area = getClientArea();
		if (area.width > 0 && area.height > 0) {
			double aspect = area.width / (double) area.height;
			scene = source.draw(aspect);
			double before = view.scale();
			view = whole ? Viewport.whole(scene, area.width, area.height) : view;
			scene = view.scale() == before ? scene : source.draw(aspect);
			targets = Targets.of(scene);
			focus = focus.filter(id -> targets.named(id).isPresent());
		}
		redraw();
	}

	/** The least size of letters that can be read here, mm of the drawing. */
	double readable() {
		return READABLE / view.scale();
	}

	private void paint(GC gc) {
		if (moving.isPresent()) {
			moving.get().paint(gc, palette, view, getClientArea());
		} else {
			gc.setBackground(Colours.of(palette.ground()));
			gc.fillRectangle(getClientArea());
			ScenePainter.paint(gc, scene, palette, view);
		}
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

	/** What a screen reader calls the whole drawing. */
	public String name() {
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

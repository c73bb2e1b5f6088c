package padwright.views.canvas;

import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;

/** What the mouse does to a drawing. */
final class CanvasMouse {

	private static final double WHEEL = 1.15;
	/** How far it must go to be a drag and not a click, in points. */
	private static final int START = 4;

	private final SceneCanvas canvas;
	private Optional<String> pressed = Optional.empty();
	private boolean down;
	private boolean dragging;
	private boolean carrying;
	private int button;
	private int x;
	private int y;

	CanvasMouse(SceneCanvas canvas) {
		this.canvas = canvas;
		canvas.addListener(SWT.MouseDown, this::down);
		canvas.addListener(SWT.MouseMove, this::move);
		canvas.addListener(SWT.MouseUp, this::up);
		canvas.addListener(SWT.MouseDoubleClick, event -> canvas.at(event.x, event.y)
				.ifPresent(canvas.listener()::opened));
		canvas.addListener(SWT.MouseVerticalWheel, this::wheel);
	}

	private void down(Event event) {
		canvas.setFocus();
		canvas.setToolTipText(null);
		if (event.button == 1 || event.button == 2) {
			pressed = event.button == 1 ? canvas.at(event.x, event.y) : Optional.empty();
			down = true;
			dragging = false;
			carrying = false;
			button = event.button;
			x = event.x;
			y = event.y;
		}
	}

	private void move(Event event) {
		if (!down) {
			hover(event);
			return;
		}
		boolean begins = !dragging && !canvas.isFixed()
				&& Math.max(Math.abs(event.x - x), Math.abs(event.y - y)) >= START;
		if (begins) {
			dragging = true;
			carrying = button == 1 && canvas.listener().grabbed(pressed, canvas.view().sceneX(x),
					canvas.view().sceneY(y), (event.stateMask & SWT.MOD1) != 0);
		}
		if (carrying) {
			canvas.listener().carried(canvas.view().sceneX(event.x), canvas.view().sceneY(event.y));
		} else if (dragging) {
			follow(event);
		}
	}

	private void follow(Event event) {
		Optional<String> dragged = pressed.filter(canvas.listener()::canDrag);
		if (dragged.isPresent()) {
			canvas.listener().dragged(dragged.get(), canvas.view().sceneX(event.x), canvas.view().sceneY(event.y));
		} else {
			canvas.pan(event.x - x, event.y - y);
			x = event.x;
			y = event.y;
		}
	}

	private void hover(Event event) {
		Optional<String> over = canvas.at(event.x, event.y);
		String text = over.map(canvas::meaning).orElse(null);
		if (text == null ? canvas.getToolTipText() != null : !text.equals(canvas.getToolTipText())) {
			canvas.setToolTipText(text);
			canvas.setCursor(canvas.getDisplay().getSystemCursor(over.isPresent() ? SWT.CURSOR_HAND
					: SWT.CURSOR_ARROW));
		}
	}

	private void up(Event event) {
		if (!down) {
			return;
		}
		down = false;
		if (carrying) {
			canvas.listener().released(canvas.at(event.x, event.y));
		} else if (dragging) {
			pressed.filter(canvas.listener()::canDrag).ifPresent(canvas.listener()::dropped);
		} else if (event.button == 1) {
			click(event, (event.stateMask & (SWT.MOD1 | SWT.MOD2)) != 0);
		}
	}

	private void click(Event event, boolean adding) {
		if (!canvas.listener().clicked(canvas.view().sceneX(event.x), canvas.view().sceneY(event.y), adding)) {
			canvas.setFocusOn(pressed);
			pressed.ifPresentOrElse(id -> canvas.listener().touched(id, adding), canvas.listener()::cleared);
		}
	}

	private void wheel(Event event) {
		if ((event.stateMask & SWT.MOD1) != 0) {
			canvas.zoom(event.count > 0 ? WHEEL : 1 / WHEEL, event.x, event.y);
		} else {
			int step = event.count * 16;
			boolean aside = (event.stateMask & SWT.MOD2) != 0;
			canvas.pan(aside ? step : 0, aside ? 0 : step);
		}
		event.doit = false;
	}
}

package padwright.views.canvas;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;

import padwright.views.scenes.Target;

/** Tells a screen reader of the targets of a drawing, by their place in it. */
final class CanvasAccess {

	private final SceneCanvas canvas;

	CanvasAccess(SceneCanvas canvas) {
		this.canvas = canvas;
		canvas.getAccessible().addAccessibleListener(new Names());
		canvas.getAccessible().addAccessibleControlListener(new Children());
	}

	private List<Target> targets() {
		return canvas.targets().all();
	}

	private Optional<Target> child(int id) {
		return id >= 0 && id < targets().size() ? Optional.of(targets().get(id)) : Optional.empty();
	}

	private int focused() {
		return canvas.focus().flatMap(canvas.targets()::named).map(targets()::indexOf).orElse(ACC.CHILDID_SELF);
	}

	private final class Names extends AccessibleAdapter {

		@Override
		public void getName(AccessibleEvent event) {
			event.result = child(event.childID).map(target -> canvas.meaning(target.id())).orElseGet(canvas::name);
		}

		@Override
		public void getDescription(AccessibleEvent event) {
			event.result = child(event.childID).isPresent() ? null
					: canvas.focus().map(canvas::meaning).orElse(null);
		}
	}

	private final class Children extends AccessibleControlAdapter {

		@Override
		public void getChildCount(AccessibleControlEvent event) {
			event.detail = targets().size();
		}

		@Override
		public void getChildren(AccessibleControlEvent event) {
			event.children = IntStream.range(0, targets().size()).boxed().toArray();
		}

		@Override
		public void getChildAtPoint(AccessibleControlEvent event) {
			Point point = canvas.toControl(event.x, event.y);
			event.childID = canvas.at(point.x, point.y).flatMap(canvas.targets()::named).map(targets()::indexOf)
					.orElse(ACC.CHILDID_SELF);
		}

		@Override
		public void getLocation(AccessibleControlEvent event) {
			child(event.childID).ifPresent(target -> {
				Rectangle area = canvas.getDisplay().map(canvas, null, canvas.onScreen(target));
				event.x = area.x;
				event.y = area.y;
				event.width = area.width;
				event.height = area.height;
			});
		}

		@Override
		public void getRole(AccessibleControlEvent event) {
			event.detail = child(event.childID).isPresent() ? ACC.ROLE_LISTITEM : ACC.ROLE_LIST;
		}

		@Override
		public void getState(AccessibleControlEvent event) {
			boolean isFocused = event.childID == focused() && canvas.isFocusControl();
			event.detail = ACC.STATE_FOCUSABLE | (isFocused ? ACC.STATE_FOCUSED : 0)
					| child(event.childID).map(target -> ACC.STATE_SELECTABLE
							| (canvas.isChosen(target.id()) ? ACC.STATE_SELECTED : 0)).orElse(0);
		}

		@Override
		public void getFocus(AccessibleControlEvent event) {
			event.childID = canvas.isFocusControl() ? focused() : ACC.CHILDID_NONE;
		}

		@Override
		public void getValue(AccessibleControlEvent event) {
			event.result = child(event.childID).isPresent() ? null : canvas.focus().map(canvas::meaning).orElse(null);
		}
	}
}

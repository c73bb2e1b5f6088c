package padwright.views.canvas;

import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.Accessible;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleControlListener;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.widgets.Control;

/** What the toolkit would tell a screen reader of a control: asked of the listeners that it asks. */
final class Spoken {

	private final Accessible accessible;

	Spoken(Control control) {
		accessible = control.getAccessible();
	}

	private <L> List<L> listeners(String field, Class<L> kind) {
		try {
			Field listeners = Accessible.class.getDeclaredField(field);
			listeners.setAccessible(true);
			List<?> all = (List<?>) listeners.get(accessible);
			return all == null ? List.of() : all.stream().map(kind::cast).toList();
		} catch (ReflectiveOperationException otherToolkit) {
			throw new AssertionError(otherToolkit);
		}
	}

	String name() {
		return name(ACC.CHILDID_SELF);
	}

	String name(int child) {
		AccessibleEvent event = new AccessibleEvent(accessible);
		event.childID = child;
		listeners("accessibleListeners", AccessibleListener.class).forEach(listener -> listener.getName(event));
		return event.result;
	}

	private AccessibleControlEvent event(int child) {
		AccessibleControlEvent event = new AccessibleControlEvent(accessible);
		event.childID = child;
		return event;
	}

	private List<AccessibleControlListener> controls() {
		return listeners("accessibleControlListeners", AccessibleControlListener.class);
	}

	/** The names of all that is in it. */
	List<String> children() {
		AccessibleControlEvent event = event(ACC.CHILDID_SELF);
		controls().forEach(listener -> listener.getChildren(event));
		List<String> names = new ArrayList<>();
		Arrays.stream(event.children).forEach(child -> names.add(name((Integer) child)));
		return names;
	}

	int child(String beginning) {
		List<String> names = children();
		for (int child = 0; child < names.size(); child++) {
			if (names.get(child).startsWith(beginning)) {
				return child;
			}
		}
		throw new AssertionError(beginning + " is none of " + names);
	}

	int role(int child) {
		AccessibleControlEvent event = event(child);
		controls().forEach(listener -> listener.getRole(event));
		return event.detail;
	}

	boolean is(int child, int state) {
		AccessibleControlEvent event = event(child);
		controls().forEach(listener -> listener.getState(event));
		return (event.detail & state) != 0;
	}
}

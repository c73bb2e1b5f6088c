package padwright.benchmarks.drawing;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.eclipse.emf.common.util.URI;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;

import padwright.language.PadwrightStandaloneSetup;
import padwright.model.plan.Document;
import padwright.views.Palette;
import padwright.views.canvas.LayoutControl;
import padwright.views.layout.Layout;

/**
 * Drags a key of a large layout, and tells how many times a second it is drawn anew, as seen on the screen, and how many
 * times it would be if the machine did nothing else: by the processor time of the thread of the window.
 */
public final class DrawingReport {

	private static final int FRAMES = 300;
	private static final int WARM_UP = 60;
	private static final int WIDTH = 1600;
	private static final int HEIGHT = 1000;
	private static final double NANOS = 1e9;
	private static final int PLACE = 8;

	private DrawingReport() {
	}

	/** The number of keys, 200 if not said. */
	public static void main(String[] arguments) throws IOException {
		int keys = arguments.length == 0 ? 200 : Integer.parseInt(arguments[0]);
		Display display = new Display();
		Shell shell = new Shell(display);
		shell.setLayout(new FillLayout());
		shell.setSize(WIDTH, HEIGHT);
		LayoutControl control = new LayoutControl(shell, Palette.light());
		control.show(layout(text(keys)));
		shell.open();
		settle(display);
		report("all of it", drag(control, display));
		control.canvas().zoom(6);
		settle(display);
		report("enlarged six times", drag(control, display));
		shell.dispose();
		display.dispose();
		System.exit(0);
	}

	/** Keys in two lines along a tube, each coupled with the next, with touches and rods. */
	private static String text(int keys) {
		StringBuilder text = new StringBuilder("unit mm\nsystem Large {\n");
		text.append("\tjoint body long ").append(keys * PLACE + 40).append(" bore 30\n");
		for (int key = 1; key <= keys; key++) {
			text.append("\ttouch T").append(key).append(" at ").append(key * PLACE).append(" around 70\n");
		}
		for (int key = 1; key <= keys; key++) {
			text.append("\tkey K").append(key).append(" open by T").append(key);
			if (key < keys) {
				text.append(" closes K").append(key + 1);
			}
			text.append(" hole 9 cup 12 at ").append(key * PLACE).append(" around ").append(key % 2 * 40).append('\n');
		}
		for (int rod = 1; rod < keys; rod += 10) {
			text.append("\trod R").append(rod).append(" from ").append(rod * PLACE).append(" to ")
					.append((rod + 9) * PLACE).append(" around 55 carries K").append(rod).append('\n');
		}
		return text.append("}\n").toString();
	}

	private static Layout layout(String text) throws IOException {
		XtextResource resource = (XtextResource) PadwrightStandaloneSetup.doSetup().getInstance(XtextResourceSet.class)
				.createResource(URI.createURI("shop:/large.keys"));
		resource.load(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
				Map.of(XtextResource.OPTION_ENCODING, StandardCharsets.UTF_8.name()));
		return Layout.of(((Document) resource.getContents().get(0)).getSystems().get(0));
	}

	private static void settle(Display display) {
		while (display.readAndDispatch()) {
			// Until all is drawn.
		}
	}

	/** From a movement of the mouse until what comes of it is painted, in nanoseconds. */
	private record Frame(long taken, long processor) {
	}

	private static List<Frame> drag(LayoutControl control, Display display) {
		Point from = control.point(100 * PLACE, 0);
		mouse(control, SWT.MouseDown, from.x, from.y);
		ThreadMXBean threads = ManagementFactory.getThreadMXBean();
		List<Frame> frames = new ArrayList<>();
		for (int frame = 0; frame < FRAMES + WARM_UP; frame++) {
			int away = 5 + frame % 60;
			long start = System.nanoTime();
			long worked = threads.getCurrentThreadCpuTime();
			mouse(control, SWT.MouseMove, from.x + away, from.y + away / 2);
			control.canvas().update();
			settle(display);
			if (frame >= WARM_UP) {
				frames.add(new Frame(System.nanoTime() - start, threads.getCurrentThreadCpuTime() - worked));
			}
		}
		if (!control.editing().isDragging()) {
			throw new IllegalStateException("nothing was dragged");
		}
		control.editing().cancel();
		mouse(control, SWT.MouseUp, from.x, from.y);
		return frames;
	}

	private static void mouse(LayoutControl control, int type, int x, int y) {
		Event event = new Event();
		event.button = 1;
		event.x = x;
		event.y = y;
		control.canvas().notifyListeners(type, event);
	}

	private static void report(String what, List<Frame> frames) {
		List<Long> taken = frames.stream().map(Frame::taken).sorted().toList();
		List<Long> processor = frames.stream().map(Frame::processor).sorted().toList();
		System.out.println(String.format(Locale.ROOT, "dragging, %s: %.0f frames a second (median), %.0f (slowest 5 %%), "
				+ "%.0f and %.0f by processor time", what, rate(taken, 50), rate(taken, 95), rate(processor, 50),
				rate(processor, 95)));
	}

	private static double rate(List<Long> sorted, int percent) {
		return NANOS / sorted.get(sorted.size() * percent / 100);
	}
}

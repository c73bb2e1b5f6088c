package padwright.views.canvas;

import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;

import padwright.drawing.scene.Scene;
import padwright.engine.length.Length;
import padwright.views.Messages;
import padwright.views.Palette;
import padwright.views.bench.BenchSession;
import padwright.views.clock.ClockProposal;
import padwright.views.clock.ClockState;

/** One key, as large as the window, worked on with a few keys, a foot switch or a finger. Esc leaves. */
public final class BenchControl extends Composite {

	private static final double MM_PER_INCH = 25.4;
	private static final int SECOND = 1000;

	private final BenchSession session;
	private final Runnable onLeave;
	private final SceneCanvas canvas;
	private Palette palette;

	/**
	 * @param session what it shows and does
	 * @param onLeave called on Esc
	 */
	public BenchControl(Composite parent, Palette palette, BenchSession session, Runnable onLeave) {
		super(parent, SWT.NONE);
		this.session = session;
		this.onLeave = onLeave;
		this.palette = palette;
		setLayout(new FillLayout());
		canvas = new SceneCanvas(this, palette, new Hands());
		canvas.setName(Messages.of("bench.name"));
		canvas.fix();
		canvas.setSource(this::draw);
		tick();
	}

	/** The clock of the job goes on. */
	private void tick() {
		getDisplay().timerExec(SECOND, () -> {
			if (!isDisposed()) {
				redrawn();
				tick();
			}
		});
	}

	/** Shows a row as the plan's text says now. */
	public void show(ClockState state) {
		session.show(state);
		redrawn();
	}

	/** Shows what a solve came to. */
	public void propose(ClockProposal proposal) {
		session.propose(proposal);
		redrawn();
	}

	/** An indicator sent a length, or what is none. */
	public void measured(Optional<Length> length, String line) {
		length.ifPresentOrElse(session::measured, () -> session.notMeasured(line));
		redrawn();
	}

	/** What is said of the indicator from now on. */
	public void setIndicator(String words) {
		session.setIndicator(words);
		redrawn();
	}

	public void setPalette(Palette palette) {
		this.palette = palette;
		canvas.setPalette(palette);
	}

	/** The step that is offered: the name of its action. */
	public Optional<String> offered() {
		return session.offered();
	}

	/** What the key that is shown is called. */
	public String label() {
		return session.label();
	}

	/** What is said of the indicator now. */
	public String indicator() {
		return session.indicator();
	}

	/** What is typed into. */
	public SceneCanvas canvas() {
		return canvas;
	}

	@Override
	public boolean setFocus() {
		return canvas.setFocus();
	}

	private Scene draw(double aspect) {
		Rectangle area = canvas.getClientArea();
		Point dpi = getDisplay().getDPI();
		return session.draw(palette, Math.max(1, area.width) * MM_PER_INCH / dpi.x,
				Math.max(1, area.height) * MM_PER_INCH / dpi.y);
	}

	private void redrawn() {
		canvas.setSource(this::draw);
	}

	private final class Hands implements SceneListener {

		@Override
		public void touched(String id, boolean adding) {
			canvas.setFocusOn(Optional.empty());
			session.touch(id);
			redrawn();
		}

		@Override
		public boolean typed(KeyEvent event) {
			if (event.keyCode == SWT.ESC) {
				onLeave.run();
				return true;
			}
			Optional<String> key = KeyNames.of(event);
			boolean onButton = canvas.focus().isPresent() && key.equals(Optional.of("Enter"));
			boolean used = !onButton && key.filter(session::press).isPresent();
			if (used) {
				canvas.setFocusOn(Optional.empty());
				redrawn();
			}
			return used;
		}
	}
}

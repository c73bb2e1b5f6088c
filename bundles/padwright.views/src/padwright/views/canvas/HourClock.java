package padwright.views.canvas;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;

import padwright.engine.clock.ClockHour;
import padwright.views.Palette;
import padwright.views.clock.HourPicture;

/**
 * A small clock on which hours are chosen: with a click, or with the arrows, which go around it by half hours, and the space
 * bar or Enter.
 */
public final class HourClock extends Composite {

	private static final int SIZE = 150;

	private final SceneCanvas canvas;
	private final boolean isSeveral;
	private final Consumer<List<ClockHour>> onChoose;
	private List<ClockHour> hours = List.of();
	private Palette palette;

	/**
	 * @param name that a screen reader says
	 * @param isSeveral whether several can be chosen; else another takes the place of the one
	 * @param onChoose told of all that are chosen, in their order
	 */
	public HourClock(Composite parent, Palette palette, String name, boolean isSeveral, Consumer<List<ClockHour>> onChoose) {
		super(parent, SWT.NONE);
		this.palette = palette;
		this.isSeveral = isSeveral;
		this.onChoose = onChoose;
		setLayout(new FillLayout());
		canvas = new SceneCanvas(this, palette, new Touches());
		canvas.setName(name);
		canvas.setChosen(id -> HourPicture.hour(id).filter(hours::contains).isPresent());
		canvas.fix();
		canvas.leaveWithTab();
		redrawn();
	}

	/** Shows which hours are chosen. */
	public void show(List<ClockHour> chosen) {
		hours = List.copyOf(chosen);
		redrawn();
	}

	public SceneCanvas canvas() {
		return canvas;
	}

	public void setPalette(Palette other) {
		palette = other;
		canvas.setPalette(other);
		redrawn();
	}

	@Override
	public boolean setFocus() {
		return canvas.setFocus();
	}

	@Override
	public Point computeSize(int widthHint, int heightHint, boolean changed) {
		return new Point(SIZE, SIZE);
	}

	private void redrawn() {
		canvas.setSource(aspect -> HourPicture.draw(new LinkedHashSet<>(hours), palette));
	}

	private void toggle(ClockHour hour) {
		onChoose.accept(isSeveral ? HourPicture.toggled(hours, hour) : List.of(hour));
	}

	private void go(int halfHours) {
		ClockHour from = canvas.focus().flatMap(HourPicture::hour)
				.orElseGet(() -> hours.stream().findFirst().orElse(ClockHour.ofHour(12)).plusHalfHours(-halfHours));
		canvas.targets().named(HourPicture.id(from.plusHalfHours(halfHours))).ifPresent(canvas::focusOn);
	}

	private final class Touches implements SceneListener {

		@Override
		public void touched(String id, boolean adding) {
			HourPicture.hour(id).ifPresent(HourClock.this::toggle);
		}

		@Override
		public boolean typed(KeyEvent key) {
			switch (key.keyCode) {
			case SWT.ARROW_RIGHT, SWT.ARROW_DOWN -> go(1);
			case SWT.ARROW_LEFT, SWT.ARROW_UP -> go(-1);
			case SWT.CR, SWT.KEYPAD_CR, ' ' -> {
				Optional<ClockHour> here = canvas.focus().flatMap(HourPicture::hour);
				here.ifPresent(HourClock.this::toggle);
				return here.isPresent();
			}
			default -> {
				return false;
			}
			}
			return true;
		}
	}
}

package padwright.views.canvas;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

import padwright.engine.acoustics.Resonance;
import padwright.views.Messages;
import padwright.views.Palette;
import padwright.views.sound.CurveHeard;
import padwright.views.sound.SoundScene;
import padwright.views.sound.SoundSession;

/**
 * How a system sounds: cents of the scale, and how it answers in one fingering, which is chosen in the drawing, with the
 * buttons or by what is pressed elsewhere. The note is heard as a plain tone beside the tempered one.
 */
public final class SoundControl extends Composite {

	private final SoundSession session = new SoundSession();
	private final Bar bar;
	private final Button computed;
	private final Button tempered;
	private final Button both;
	private final Label silent;
	private final SceneCanvas canvas;
	private final Label status;
	private Palette palette;
	private Optional<String> lastChosen = Optional.empty();
	private Optional<String> noSound = Optional.empty();
	private Runnable onWish = () -> {
	};
	private Consumer<List<Double>> onHear = hertz -> {
	};

	public SoundControl(Composite parent, Palette palette) {
		super(parent, SWT.NONE);
		this.palette = palette;
		bar = new Bar(this);
		named(bar.button(Messages.of("fingering.before"), Messages.of("fingering.before"), () -> walk(-1)));
		named(bar.button(Messages.of("fingering.next"), Messages.of("fingering.next"), () -> walk(1)));
		bar.label(Messages.of("sound.hear"));
		computed = named(bar.button(Messages.of("sound.hearComputed"), Messages.of("sound.hearComputedTip"),
				() -> hear(computedHertz().stream())));
		tempered = named(bar.button(Messages.of("sound.hearTempered"), Messages.of("sound.hearTemperedTip"),
				() -> hear(temperedHertz().stream())));
		both = named(bar.button(Messages.of("sound.hearBoth"), Messages.of("sound.hearBothTip"),
				() -> hear(Stream.concat(computedHertz().stream(), temperedHertz().stream()))));
		silent = bar.label("");
		canvas = new SceneCanvas(this, palette, new Touches());
		canvas.setName(Messages.of("sound.name"));
		Bar.fill(canvas);
		status = new Label(this, SWT.WRAP);
		GridData line = new GridData(SWT.FILL, SWT.BOTTOM, true, false);
		line.horizontalIndent = 8;
		status.setLayoutData(line);
		setPalette(palette);
	}

	private static Button named(Button button) {
		Bar.name(button, button.getToolTipText());
		return button;
	}

	/** What it shows; after a change of it {@link #redrawn} is to be called. */
	public SoundSession session() {
		return session;
	}

	/** Told when another fingering is to be worked out. */
	public void onWish(Runnable listener) {
		onWish = listener;
	}

	/** Told the frequencies in Hz that are to be heard, one after the other. */
	public void onHear(Consumer<List<Double>> listener) {
		onHear = listener;
	}

	/** Why no tone can be heard, in words; nothing if it can. */
	public void setSilent(Optional<String> why) {
		noSound = why;
		silent.setText(why.orElse(""));
		silent.requestLayout();
		redrawn();
	}

	/** Whether no tone can be heard. */
	public boolean isSilent() {
		return noSound.isPresent();
	}

	public SceneCanvas canvas() {
		return canvas;
	}

	/** What it says of the chosen note. */
	public String status() {
		return status.getText();
	}

	public void setPalette(Palette other) {
		palette = other;
		bar.setPalette(other);
		canvas.setPalette(other);
		for (Control control : List.of(this, status)) {
			control.setBackground(Colours.of(other.ground()));
			control.setForeground(Colours.of(other.ink()));
		}
		redrawn();
	}

	@Override
	public boolean setFocus() {
		return canvas.setFocus();
	}

	private void walk(int step) {
		session.walk(step);
		wished();
	}

	private void wished() {
		redrawn();
		onWish.run();
	}

	private Optional<Double> computedHertz() {
		return session.curve().flatMap(CurveHeard::played).map(Resonance::hertz);
	}

	private Optional<Double> temperedHertz() {
		return session.curve().flatMap(CurveHeard::tempered);
	}

	private void hear(Stream<Double> hertz) {
		onHear.accept(hertz.toList());
	}

	/** Draws what the session holds now. */
	public void redrawn() {
		canvas.setSource(aspect -> SoundScene.draw(session, palette, aspect));
		if (!session.chosen().equals(lastChosen)) {
			lastChosen = session.chosen();
			canvas.setFocusOn(lastChosen.map(name -> SoundScene.NOTE + name));
		}
		bar.enable(computed, noSound.isEmpty() && computedHertz().isPresent());
		bar.enable(tempered, noSound.isEmpty() && temperedHertz().isPresent());
		bar.enable(both, noSound.isEmpty() && computedHertz().isPresent());
		String words = session.words();
		if (!words.equals(status.getText())) {
			status.setText(words);
			status.requestLayout();
		}
	}

	private final class Touches implements SceneListener {

		@Override
		public void touched(String id, boolean adding) {
			if (id.startsWith(SoundScene.NOTE)) {
				session.choose(id.substring(SoundScene.NOTE.length()));
				wished();
			}
		}
	}
}

package padwright.views.canvas;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
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
public final class SoundControl extends DrawingControl {

	private final SoundSession session = new SoundSession();
	private final Button computed;
	private final Button tempered;
	private final Button both;
	private final Label silent;
	private Optional<String> lastChosen = Optional.empty();
	private Optional<String> noSound = Optional.empty();
	private Runnable onWish = () -> {
	};
	private Consumer<List<Double>> onHear = hertz -> {
	};

	public SoundControl(Composite parent, Palette palette) {
		super(parent, palette);
		named(bar().button(Messages.of("fingering.before"), Messages.of("fingering.before"), () -> walk(-1)));
		named(bar().button(Messages.of("fingering.next"), Messages.of("fingering.next"), () -> walk(1)));
		bar().label(Messages.of("sound.hear"));
		computed = named(bar().button(Messages.of("sound.hearComputed"), Messages.of("sound.hearComputedTip"),
				() -> hear(computedHertz().stream())));
		tempered = named(bar().button(Messages.of("sound.hearTempered"), Messages.of("sound.hearTemperedTip"),
				() -> hear(temperedHertz().stream())));
		both = named(bar().button(Messages.of("sound.hearBoth"), Messages.of("sound.hearBothTip"),
				() -> hear(Stream.concat(computedHertz().stream(), temperedHertz().stream()))));
		silent = bar().label("");
		drawing(Messages.of("sound.name"), new Touches());
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
	@Override
	public void redrawn() {
		canvas().setSource(aspect -> SoundScene.draw(session, palette(), aspect));
		if (!session.chosen().equals(lastChosen)) {
			lastChosen = session.chosen();
			canvas().setFocusOn(lastChosen.map(name -> SoundScene.NOTE + name));
		}
		bar().enable(computed, noSound.isEmpty() && computedHertz().isPresent());
		bar().enable(tempered, noSound.isEmpty() && temperedHertz().isPresent());
		bar().enable(both, noSound.isEmpty() && computedHertz().isPresent());
		tell(session.words());
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

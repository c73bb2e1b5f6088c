package padwright.workbench.views;

import java.io.ByteArrayOutputStream;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;

import padwright.engine.mechanism.Pressing;
import padwright.model.keysystem.KeySystem;
import padwright.views.Palette;
import padwright.views.canvas.SoundControl;
import padwright.views.layout.Layout;
import padwright.views.sound.CurveHeard;
import padwright.views.sound.ScaleHeard;
import padwright.views.sound.SoundSession;
import padwright.views.sound.SoundWish;
import padwright.views.sound.SoundWork;
import padwright.workbench.Messages;
import padwright.workbench.bench.Bench;
import padwright.workbench.bench.Hands;
import padwright.workbench.bench.OnBench;
import padwright.workbench.bench.Workpiece;
import padwright.workbench.tones.PlainTone;
import padwright.workbench.tones.Speaker;

/**
 * How the system in the active editor sounds, or that of the plan there; also while its holes are dragged in the layout, and
 * in the fingering that is pressed among the fingerings.
 */
public final class SoundView extends BenchView<SoundControl> implements Hands.Listener {

	public static final String ID = "padwright.workbench.sound";

	private static final int TONE_MILLISECONDS = 1200;
	/** What was let go of is written and read by then; until then it sounds where it was let go. */
	private static final int WRITTEN_MILLISECONDS = 500;

	private final Speaker speaker = new Speaker();
	private final SoundWork work = new SoundWork();
	private final Runnable settle = this::settle;
	private NewestWork<SoundWish, CurveHeard> curves;
	private NewestWork<SoundWish, ScaleHeard> scales;
	private Layout drawn = Layout.empty();
	private Optional<KeySystem> shown = Optional.empty();

	@Override
	protected SoundControl create(Composite parent, Palette palette, Bench bench) {
		SoundControl sound = new SoundControl(parent, palette);
		Display display = parent.getDisplay();
		curves = new NewestWork<>(Messages.get("sound.working"), display, work::curve, answer -> tell(sound, answer));
		scales = new NewestWork<>(Messages.get("sound.working"), display, work::scale, answer -> tell(sound, answer));
		sound.onWish(() -> sound.session().wish().ifPresent(curves::wish));
		sound.onHear(this::play);
		speaker.ask(later(sound));
		bench.hands().follow(this);
		return sound;
	}

	private static void tell(SoundControl sound, CurveHeard answer) {
		if (!sound.isDisposed()) {
			sound.session().accept(answer);
			sound.redrawn();
		}
	}

	private static void tell(SoundControl sound, ScaleHeard answer) {
		if (!sound.isDisposed()) {
			sound.session().accept(answer);
			sound.redrawn();
		}
	}

	private Consumer<Optional<String>> later(SoundControl sound) {
		Display display = sound.getDisplay();
		return why -> {
			if (!display.isDisposed()) {
				display.asyncExec(() -> {
					if (!sound.isDisposed()) {
						sound.setSilent(why);
					}
				});
			}
		};
	}

	private void play(List<Double> hertz) {
		ByteArrayOutputStream waves = new ByteArrayOutputStream();
		hertz.forEach(tone -> waves.writeBytes(PlainTone.wave(tone, TONE_MILLISECONDS)));
		speaker.play(waves.toByteArray(), later(control()));
	}

	@Override
	protected void show(SoundControl sound, OnBench onBench) {
		Optional<KeySystem> system = onBench.work().flatMap(Workpiece::keySystem);
		if (system.isPresent() && shown.filter(before -> before == system.get()).isPresent()) {
			return;
		}
		shown = system;
		sound.session().show(system, onBench.work().map(Workpiece::layout).orElseGet(Layout::empty));
		wishAll(sound);
	}

	private void wishAll(SoundControl sound) {
		sound.redrawn();
		sound.session().wish().ifPresent(wish -> {
			curves.wish(wish);
			scales.wish(wish);
		});
	}

	@Override
	public void drawn(Layout seen) {
		drawn = seen;
		boolean isLetGo = control().session().isDragging() && !control().session().moves(seen);
		control().getDisplay().timerExec(isLetGo ? WRITTEN_MILLISECONDS : -1, settle);
		if (!isLetGo) {
			settle();
		}
	}

	private void settle() {
		if (!control().isDisposed() && control().session().drag(drawn)) {
			wishAll(control());
		}
	}

	@Override
	public void pressed(Optional<String> note, Pressing touches) {
		SoundSession session = control().session();
		session.press(note, touches);
		control().redrawn();
		session.wish().ifPresent(curves::wish);
	}

	@Override
	protected void setPalette(SoundControl sound, Palette palette) {
		sound.setPalette(palette);
	}

	@Override
	public void dispose() {
		bench().hands().unfollow(this);
		curves.stop();
		scales.stop();
		speaker.close();
		super.dispose();
	}
}

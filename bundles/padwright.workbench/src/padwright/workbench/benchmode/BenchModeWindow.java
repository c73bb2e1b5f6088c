package padwright.workbench.benchmode;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Shell;

import padwright.views.bench.BenchSession;
import padwright.views.bench.JobClock;
import padwright.views.bench.KeyOrder;
import padwright.views.canvas.BenchControl;
import padwright.views.clock.ClockProposal;
import padwright.views.clock.ClockState;
import padwright.workbench.Messages;
import padwright.workbench.bench.Bench;
import padwright.workbench.bench.OnBench;
import padwright.workbench.bench.PlanOnBench;
import padwright.workbench.prefs.Preferences;
import padwright.workbench.themes.Themes;
import padwright.workbench.views.RowWork;
import padwright.workbench.views.SolveJob;
import padwright.workup.service.KeyJob;

/** A window as large as the screen, with one key of the plan on the bench. What is done in it is written into the text. */
final class BenchModeWindow {

	/** How long each job is under way, for as long as the program runs. */
	private static final Map<String, JobClock> CLOCKS = new HashMap<>();

	private final Bench bench;
	private final Shell shell;
	private final JobClock time;
	private final BenchControl control;
	private final RowWork<ClockState> work;
	private final Ears ears = Ears.asPreferred();
	private final Themes themes;
	private final Consumer<OnBench> onChange = this::shown;
	private Optional<Job> solving = Optional.empty();
	private Optional<Indicator> indicator = Optional.empty();

	private BenchModeWindow(Shell parent, Bench bench, PlanOnBench plan) {
		this.bench = bench;
		shell = new Shell(parent.getDisplay(), SWT.SHELL_TRIM);
		shell.setText(Messages.get("benchMode.title"));
		shell.setImages(parent.getImages());
		shell.setLayout(new FillLayout());
		time = CLOCKS.computeIfAbsent(plan.uri(), uri -> new JobClock(System::nanoTime));
		BenchSession session = new BenchSession(bench::write, Preferences.benchKeys(), time);
		session.onGo(bench::choose);
		session.onSolve(this::solve);
		if (ears.hear()) {
			session.onTold(ears);
		}
		themes = new Themes(palette -> control().setPalette(palette));
		control = new BenchControl(shell, themes.palette(), session, shell::close);
		work = new RowWork<>(shell.getDisplay(), ClockState::of, this::show);
		closeWith(parent);
	}

	private BenchControl control() {
		return control;
	}

	/** Opens it on the key that is chosen, or on the first in the order of work. */
	static void open(Shell parent, Bench bench, PlanOnBench plan) {
		BenchModeWindow opened = new BenchModeWindow(parent, bench, plan);
		if (bench.shown().row().flatMap(KeyJob::key).isEmpty()) {
			bench.choose(KeyOrder.of(plan.service()).get(0).name());
		}
		opened.open(parent);
	}

	private void open(Shell parent) {
		if (!time.isRunning()) {
			time.toggle();
		}
		shell.setBounds(parent.getMonitor().getBounds());
		shell.setFullScreen(true);
		shell.open();
		control.setFocus();
		themes.follow();
		bench.follow(onChange);
		indicator = Indicator.asPreferred(control);
	}

	private void closeWith(Shell parent) {
		Listener end = (Event event) -> shell.close();
		parent.addListener(SWT.Dispose, end);
		shell.addListener(SWT.Dispose, event -> {
			if (!parent.isDisposed()) {
				parent.removeListener(SWT.Dispose, end);
			}
			closed();
		});
	}

	private void closed() {
		bench.unfollow(onChange);
		themes.unfollow();
		work.stop();
		solving.ifPresent(Job::cancel);
		ears.close();
		indicator.ifPresent(Indicator::close);
		if (time.isRunning()) {
			time.toggle();
		}
	}

	private void shown(OnBench onBench) {
		work.choose(onBench.row());
	}

	private void show(ClockState state) {
		if (!control.isDisposed()) {
			control.show(state);
		}
	}

	private void solve(KeyJob row) {
		solving.ifPresent(Job::cancel);
		Job next = new SolveJob(row, proposal -> shell.getDisplay().asyncExec(() -> propose(proposal)));
		next.schedule();
		solving = Optional.of(next);
	}

	private void propose(ClockProposal proposal) {
		if (!control.isDisposed()) {
			control.propose(proposal);
		}
	}
}

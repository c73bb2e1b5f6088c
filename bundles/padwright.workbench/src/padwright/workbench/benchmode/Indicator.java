package padwright.workbench.benchmode;

import java.util.Optional;

import org.eclipse.swt.widgets.Display;

import padwright.exchange.readings.IndicatorLine;
import padwright.views.Shown;
import padwright.views.canvas.BenchControl;
import padwright.workbench.Messages;
import padwright.workbench.indicator.SerialLines;
import padwright.workbench.prefs.Preferences;

/** The digital indicator at a serial port: what it sends is read into the hour in hand. */
final class Indicator implements SerialLines.Listener {

	private final BenchControl control;
	private final Display display;
	private final String port;
	private SerialLines lines;

	private Indicator(BenchControl control, String port) {
		this.control = control;
		this.display = control.getDisplay();
		this.port = port;
	}

	/** Reads the port that is preferred, if there is one. */
	static Optional<Indicator> asPreferred(BenchControl control) {
		return Optional.of(Preferences.indicatorPort()).filter(port -> !port.isBlank()).map(port -> {
			Indicator indicator = new Indicator(control, port);
			indicator.lines = SerialLines.read(port, Preferences.indicatorBaud(), indicator);
			return indicator;
		});
	}

	@Override
	public void line(String line) {
		later(() -> control.measured(IndicatorLine.of(line, Shown.unit()), line));
	}

	@Override
	public void open(boolean open) {
		later(() -> control.setIndicator(Messages.get(open ? "benchMode.indicator" : "benchMode.indicator.gone", port)));
	}

	private void later(Runnable work) {
		if (!display.isDisposed()) {
			display.asyncExec(() -> {
				if (!control.isDisposed()) {
					work.run();
				}
			});
		}
	}

	void close() {
		lines.close();
	}
}
